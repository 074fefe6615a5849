package io.github.brinewright.internal.section;

import io.github.brinewright.internal.document.Tag;
import io.github.brinewright.internal.document.TextStyle;
import io.github.brinewright.internal.layout.Block;
import io.github.brinewright.internal.layout.Box;
import io.github.brinewright.internal.layout.Drawing;
import io.github.brinewright.internal.layout.Overlay;
import io.github.brinewright.internal.layout.Paragraph;
import io.github.brinewright.job.Logo;
import java.util.List;
import java.util.stream.Stream;

/** Name, contact and logo of the dealer, at the head of a document. */
record Masthead(Stationery stationery, Tag tag) {
  private static final Box LOGO = new Box(0, 0, 130, 42);

  Block block() {
    Block name =
        new Paragraph(
            tag.child(Tag.Role.PARAGRAPH),
            stationery.dealer().name(),
            TextStyle.BODY.sized(13).bold().in(stationery.accent()));
    Block contact =
        stationery.details(
            tag,
            Stream.concat(
                stationery.dealer().contact().stream(), Stream.of(stationery.dealer().license())));
    Block text = Block.stack(List.of(name, contact.after(2)));
    Block head = stationery.dealer().logo().map(logo -> beside(text, logo)).orElse(text);
    return Block.stack(List.of(head, Drawing.rule(1.2, stationery.accent()).after(7)));
  }

  private static Block beside(Block text, Logo logo) {
    return width ->
        List.of(
            Overlay.of(
                Drawing.atRight(logo, LOGO).slices(width), text.slices(width - LOGO.width() - 20)));
  }
}
