package io.github.brinewright.internal.layout;

import io.github.brinewright.internal.document.Box;
import java.util.ArrayList;
import java.util.List;

/** Distributes slices over pages before anything is drawn. */
final class Planner {
  /**
   * A slice at its place.
   *
   * @param slice to draw
   * @param y its top
   */
  record Placed(Slice slice, double y) {
    /** Puts the slice on its page, and with it the tags of what it begins. */
    void draw(Pen pen, double x) {
      slice.painter().paint(pen, x, y);
    }
  }

  private final Box text;
  private final List<List<Placed>> pages = new ArrayList<>();
  private double y;

  private Planner(Box text) {
    this.text = text;
    newPage();
  }

  /**
   * Plans the pages of some blocks.
   *
   * @param text room for text on a page
   * @param parts each begins on a new page
   * @throws IllegalStateException when a slice is taller than a page
   */
  static List<List<Placed>> plan(Box text, List<? extends Block> parts) {
    Planner planner = new Planner(text);
    for (Block part : parts) {
      if (!planner.atTop()) {
        planner.newPage();
      }
      planner.place(part.slices(text.width()));
    }
    return planner.pages;
  }

  private void newPage() {
    pages.add(new ArrayList<>());
    y = text.y();
  }

  private boolean atTop() {
    return page().isEmpty();
  }

  private List<Placed> page() {
    return pages.get(pages.size() - 1);
  }

  private void place(List<Slice> slices) {
    for (int i = 0; i < slices.size(); i++) {
      if (!atTop() && !fits(slices, i)) {
        newPage();
        Slice repeated = slices.get(i).repeated();
        if (repeated != null) {
          put(repeated);
        }
      }
      put(slices.get(i));
    }
  }

  /** Whether a slice and those it must stay with fit below what is there. */
  private boolean fits(List<Slice> slices, int first) {
    double need = 0;
    for (int i = first; i < slices.size(); i++) {
      need += slices.get(i).gap() + slices.get(i).height();
      if (need > text.height()) {
        return y + slices.get(first).gap() + slices.get(first).height() <= text.bottom();
      }
      if (!slices.get(i).keepWithNext()) {
        break;
      }
    }
    return y + need <= text.bottom() + 1e-6;
  }

  private void put(Slice slice) {
    double top = y + (atTop() ? 0 : slice.gap());
    if (top + slice.height() > text.bottom() + 1e-6) {
      throw new IllegalStateException(
          "a piece of "
              + Math.round(slice.height())
              + " points does not fit page "
              + pages.size()
              + ", which has "
              + Math.round(text.height()));
    }
    page().add(new Placed(slice, top));
    y = top + slice.height();
  }
}
