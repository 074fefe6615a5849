/** Sizing residential water softeners. */
module io.github.brinewright.core {
  requires static transitive org.jspecify;
  requires transitive org.joda.money;
  requires commons.math3;
  requires com.opencsv;
  // opencsv has no descriptor that would ask for it.
  requires org.apache.commons.lang3;
  requires java.desktop;

  exports io.github.brinewright.comparison;
  exports io.github.brinewright.cost;
  exports io.github.brinewright.demand;
  exports io.github.brinewright.finding;
  exports io.github.brinewright.home;
  exports io.github.brinewright.hydraulics;
  exports io.github.brinewright.job;
  exports io.github.brinewright.quantity;
  exports io.github.brinewright.regeneration;
  exports io.github.brinewright.sale;
  exports io.github.brinewright.service;
  exports io.github.brinewright.simulation;
  exports io.github.brinewright.sizing;
  exports io.github.brinewright.softener;
  exports io.github.brinewright.study;
  exports io.github.brinewright.trace;
  exports io.github.brinewright.treatment;
  exports io.github.brinewright.words;

  uses io.github.brinewright.job.TableFormat;
}
