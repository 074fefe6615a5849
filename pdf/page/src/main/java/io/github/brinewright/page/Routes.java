package io.github.brinewright.page;

import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.proposal.DocumentFont;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** All that is answered, by path: a fixed table; nothing of a path reaches a file. */
final class Routes {
  private static final String DOCUMENT = "/document/";

  private interface Get {
    Reply reply() throws IOException;
  }

  private interface Post {
    Reply reply(Desk desk, Asked asked) throws IOException;
  }

  private final Path folder;
  private final Supplier<LocalDate> today;
  private final String token;
  private final Map<String, Get> gets;
  private final Map<String, Post> posts;

  Routes(Path folder, Supplier<LocalDate> today, String token) {
    this.folder = folder;
    this.today = today;
    this.token = token;
    gets =
        Map.of(
            "/", () -> desk().document(new Asked(Map.of()), token),
            "/page.js", () -> Assets.text("page.js", "text/javascript"),
            "/page.css", () -> Assets.text("page.css", "text/css"),
            "/accent.css", () -> desk().accent(),
            "/regular.ttf", () -> Assets.font(DocumentFont.REGULAR),
            "/semibold.ttf", () -> Assets.font(DocumentFont.SEMIBOLD));
    posts =
        Map.of(
            "/show",
            (desk, asked) -> desk.show(asked, token),
            "/answer",
            Desk::answer,
            "/save",
            Desk::save,
            DOCUMENT + "proposal",
            (desk, asked) -> desk.take(asked, Taken.PROPOSAL),
            DOCUMENT + "three-sizes",
            (desk, asked) -> desk.take(asked, Taken.THREE_SIZES),
            DOCUMENT + "settings",
            (desk, asked) -> desk.take(asked, Taken.SETTINGS),
            DOCUMENT + "service",
            (desk, asked) -> desk.take(asked, Taken.SERVICE));
  }

  private Desk desk() {
    return new Desk(folder, today.get());
  }

  Reply get(String path) throws IOException {
    Get get = gets.get(path);
    return get == null ? nothing() : answered(get);
  }

  Reply post(String path, byte[] body) throws IOException {
    Post post = posts.get(path);
    Optional<Map<String, String>> values = FormBody.read(body);
    if (post == null) {
      return nothing();
    }
    return values.isEmpty()
        ? Reply.text(Reply.BAD, "What was sent is no form of this page.")
        : answered(() -> post.reply(desk(), new Asked(values.get())));
  }

  private static Reply nothing() {
    return Reply.text(Reply.NOT_FOUND, "There is nothing here.");
  }

  /** A folder that cannot be read is told; a fault of the program ends no server. */
  private static Reply answered(Get get) {
    try {
      return get.reply();
    } catch (CharacterCodingException notUtf8) {
      return Reply.text(Reply.CONFLICT, "sites.csv is not UTF-8; save it as UTF-8.");
    } catch (IOException unreadable) {
      return Reply.text(
          Reply.CONFLICT, "The job folder cannot be read or written: " + unreadable.getMessage());
    }
  }
}
