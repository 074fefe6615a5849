package io.github.brinewright.internal.section;

import io.github.brinewright.home.HardnessClass;
import io.github.brinewright.home.WaterAnalysis;
import io.github.brinewright.model.Chart;
import io.github.brinewright.model.Element;
import io.github.brinewright.model.Paragraph;
import io.github.brinewright.model.Phrase;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.trace.Figure;
import java.util.Arrays;
import java.util.List;

/**
 * How hard the water is, on a scale that is the same for every home, and what that does.
 *
 * @param water as it was tested
 */
record WaterOnScale(WaterAnalysis water) {
  private static final Hardness END = Hardness.ofGrainsPerGallon(30);

  List<Element> elements() {
    return List.of(Paragraph.of(lead()), scale());
  }

  private HardnessClass own() {
    return HardnessClass.of(water.hardness());
  }

  private Phrase lead() {
    return Phrase.sentences(
        List.of(
            Phrase.text(
                "water.lead",
                Phrase.of(Figure.of(water.hardness())),
                new Phrase.InOtherUnit(water.hardness()),
                Phrase.of(own())),
            Phrase.text("water.does." + own().name())));
  }

  private Chart scale() {
    return new Chart.HardnessScale(
        Phrase.text(
            "water.scale.alt",
            Phrase.of(Figure.of(END)),
            Phrase.of(Figure.of(water.hardness())),
            Phrase.of(own())),
        Arrays.stream(HardnessClass.values()).map(Phrase::of).toList(),
        HardnessClass.limits(),
        water.hardness(),
        own().ordinal(),
        END);
  }
}
