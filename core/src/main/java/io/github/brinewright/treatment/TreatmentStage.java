package io.github.brinewright.treatment;

import io.github.brinewright.home.WaterAnalysis;

/**
 * A treatment with the water before and behind it.
 *
 * @param id by which the treatment is sold
 * @param treatment what it does
 * @param before the water that reaches it
 * @param after the water behind it
 */
public record TreatmentStage(
    String id, Treatment treatment, WaterAnalysis before, WaterAnalysis after) {}
