package consumers;

import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.sizing.Setup;
import io.github.brinewright.softener.Softener;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a bed holds at three salt settings. */
final class ThreeDosages implements Consumer {
  @Override
  public String run(Path out) {
    List<SaltDosage> dosages =
        Stream.of(4.0, 6.0, 10.0).map(SaltDosage::ofPoundsPerCubicFoot).toList();
    Softener softener = Softener.withResin("one", Volume.ofCubicFeet(1)).dosages(dosages).build();
    List<Long> grains =
        Setup.of(softener).stream()
            .map(setup -> Math.round(setup.basis().usable().grains()))
            .distinct()
            .toList();
    Consumer.require(grains.size() == 3, "each setting has a capacity of its own");
    return grains.stream().map(String::valueOf).collect(Collectors.joining(", ")) + " grains";
  }
}
