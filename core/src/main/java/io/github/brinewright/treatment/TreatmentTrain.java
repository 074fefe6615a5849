package io.github.brinewright.treatment;

import io.github.brinewright.home.Substance;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.quantity.Pressure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Treatments one behind the other, in the order of the water, and the water after each. One that
 * does not fit the water that would reach it is left out.
 *
 * <pre>{@code
 * TreatmentTrain train = TreatmentTrain.of(site.water(), Map.of("iron-filter", filter));
 * WaterAnalysis softened = train.after();
 * }</pre>
 */
public final class TreatmentTrain {
  private final WaterAnalysis raw;
  private final List<TreatmentStage> stages;
  private final List<String> leftOut;

  private TreatmentTrain(WaterAnalysis raw, List<TreatmentStage> stages, List<String> leftOut) {
    this.raw = raw;
    this.stages = List.copyOf(stages);
    this.leftOut = List.copyOf(leftOut);
  }

  /**
   * {@return the treatments that change the water ahead of a softener, in their order}
   *
   * @param raw water as it was tested
   * @param treatments by id; of those at one position the first in the map comes first
   */
  public static TreatmentTrain of(WaterAnalysis raw, Map<String, Treatment> treatments) {
    List<TreatmentStage> stages = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    WaterAnalysis water = raw;
    for (Map.Entry<String, Treatment> each : inOrder(treatments)) {
      if (each.getValue().fits(water)) {
        WaterAnalysis after = each.getValue().treat(water);
        stages.add(new TreatmentStage(each.getKey(), each.getValue(), water, after));
        water = after;
      } else {
        leftOut.add(each.getKey());
      }
    }
    return new TreatmentTrain(raw, stages, leftOut);
  }

  private static List<Map.Entry<String, Treatment>> inOrder(Map<String, Treatment> treatments) {
    return treatments.entrySet().stream()
        .filter(each -> each.getValue().changesWater())
        .sorted(Comparator.comparing(each -> each.getValue().position()))
        .toList();
  }

  /** {@return the treatments with the water before and behind each} */
  public List<TreatmentStage> stages() {
    return stages;
  }

  /** {@return ids of treatments that do not fit the water that would reach them} */
  public List<String> leftOut() {
    return leftOut;
  }

  /** {@return the water behind the last one; the raw water where there is none} */
  public WaterAnalysis after() {
    return stages.isEmpty() ? raw : stages.get(stages.size() - 1).after();
  }

  /** {@return the pressure that all of them take at their service flows, at most} */
  public Pressure pressureLoss() {
    return stages.stream()
        .map(stage -> stage.treatment().pressureLoss())
        .reduce(Pressure.ofPsi(0), Pressure::plus);
  }

  /** {@return what of it a softener is sized on, with the ids of the treatments} */
  public TreatedWater treated() {
    WaterAnalysis after = after();
    TreatedWater water =
        TreatedWater.ofHardness(after.hardness())
            .by(stages.stream().map(TreatmentStage::id).toList(), pressureLoss());
    for (Substance substance : changed().toList()) {
      if (after.result(substance).isPresent()) {
        water = water.withLeft(substance, after.result(substance).get());
      }
    }
    if (after.ph().isPresent()) {
      water = water.withPh(after.ph().getAsDouble());
    }
    return after.turbidity().isPresent() ? water.withTurbidity(after.turbidity().get()) : water;
  }

  private Stream<Substance> changed() {
    return Stream.of(Substance.values())
        .filter(each -> !after().result(each).equals(raw.result(each)))
        .filter(each -> each != Substance.DISSOLVED_IRON);
  }
}
