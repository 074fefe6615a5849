package io.github.brinewright.page;

import io.github.brinewright.internal.screen.Look;
import io.github.brinewright.internal.screen.Screen;
import io.github.brinewright.internal.screen.Shell;
import io.github.brinewright.internal.visit.Asked;
import io.github.brinewright.internal.visit.Folder;
import io.github.brinewright.internal.visit.Saving;
import io.github.brinewright.internal.visit.Saving.Saved;
import io.github.brinewright.internal.visit.Visit;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.ProblemWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Answers what a page asks, from the folder as it is now.
 *
 * @param path of the folder
 * @param date of today
 */
record Desk(Path path, LocalDate date) {
  private static final String JSON_SAID = "said";

  private interface Answer {
    Reply of(Screen screen) throws IOException;
  }

  /** The answer for a folder whose files are free of errors; else what is wrong with them. */
  private Reply with(Asked asked, Answer answer) throws IOException {
    return with(Folder.read(path), asked, answer);
  }

  private Reply with(Folder folder, Asked asked, Answer answer) throws IOException {
    Optional<Job> job = folder.job();
    return job.isPresent() ? answer.of(screen(folder, job.get(), asked)) : broken(folder);
  }

  private Screen screen(Folder folder, Job job, Asked asked) {
    Look look = Look.of(asked, job.dealer());
    Visit visit = Visit.of(folder, asked, look.words().locale());
    return new Screen(look, job, visit, asked, date);
  }

  private static Reply broken(Folder folder) {
    ProblemWords words = new ProblemWords(Locale.ENGLISH);
    return Reply.text(
        Reply.CONFLICT,
        folder.shared().problems().stream().map(words::say).collect(Collectors.joining("\n")));
  }

  /** The page of the first home, before its script has asked for another. */
  Reply document(Asked asked, String token) throws IOException {
    Folder folder = Folder.read(path);
    Optional<String> first = folder.homes().keySet().stream().findFirst();
    Asked opened = first.map(id -> asked.at(Folder.nameOf(id))).orElse(asked);
    return with(
        folder, opened, screen -> Reply.of("text/html", new Shell(screen, token).document()));
  }

  /** All that is seen, in another view, language or unit system, or of another home. */
  Reply show(Asked asked, String token) throws IOException {
    return with(
        asked,
        screen -> {
          Shell shell = new Shell(screen, token);
          Map<String, Object> fields = new LinkedHashMap<>();
          fields.put("body", shell.body());
          fields.put("title", shell.title());
          fields.put("language", shell.language());
          return told(screen, fields);
        });
  }

  /** These fields, with what is wrong with the answers and what is said of them. */
  private static Reply told(Screen screen, Map<String, Object> fields) throws IOException {
    fields.put("wrong", screen.wrong(screen.visit().problems()));
    fields.put(JSON_SAID, screen.said());
    return Reply.json(Reply.OK, fields);
  }

  /** What follows from a changed answer. */
  Reply answer(Asked asked) throws IOException {
    return with(
        asked,
        screen -> {
          Map<String, Object> fields = new LinkedHashMap<>();
          fields.put("parts", screen.parts());
          fields.put("shown", screen.shown());
          return told(screen, fields);
        });
  }

  /** Writes the row. */
  Reply save(Asked asked) throws IOException {
    return with(
        asked,
        screen -> {
          Saved saved = Saving.save(screen.visit(), asked.value("version"));
          Map<String, Object> fields = new LinkedHashMap<>();
          String word = saved.outcome().name().toLowerCase(Locale.ROOT);
          fields.put(JSON_SAID, screen.look().words().text("page.save." + word));
          fields.put("wrong", screen.wrong(saved.problems()));
          fields.put("version", Folder.read(path).version());
          fields.put("home", Folder.nameOf(screen.visit().cells().getOrDefault("site_id", "")));
          return Reply.json(status(saved.outcome()), fields);
        });
  }

  private static int status(Saving.Outcome outcome) {
    return switch (outcome) {
      case SAVED -> Reply.OK;
      case CHANGED, SPREADSHEET -> Reply.CONFLICT;
      case WRONG -> Reply.UNPROCESSABLE;
    };
  }

  /** A document of the home as it stands on the page. */
  Reply take(Asked asked, Taken taken) throws IOException {
    return with(
        asked,
        screen -> {
          Visit visit = screen.visit();
          Optional<Reply> reply =
              visit.home().isEmpty()
                  ? Optional.empty()
                  : taken.of(visit.job().orElseThrow(), visit.home().get(), asked, date);
          return reply.isPresent()
              ? reply.get()
              : Reply.json(
                  Reply.UNPROCESSABLE, Map.of(JSON_SAID, screen.look().words().text("page.none")));
        });
  }

  /** The dealer's colour. */
  Reply accent() throws IOException {
    return with(
        new Asked(Map.of()),
        screen -> Reply.of("text/css", ":root { --dealer: " + screen.look().accent() + "; }"));
  }
}
