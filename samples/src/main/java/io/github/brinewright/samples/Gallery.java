package io.github.brinewright.samples;

import io.github.brinewright.comparison.Comparison;
import io.github.brinewright.exchange.CarriedJob;
import io.github.brinewright.job.Dealer;
import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.job.SiteCells;
import io.github.brinewright.proposal.ComparisonPage;
import io.github.brinewright.proposal.Proposal;
import io.github.brinewright.proposal.ServiceReport;
import io.github.brinewright.proposal.SettingsSheet;
import io.github.brinewright.proposal.VisitSheet;
import io.github.brinewright.words.UnitSystem;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws pages of the demo town's documents as pictures. Arguments: job folder, target folder. */
public final class Gallery {
  private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
  private static final int MARGIN = 8;

  private final Job job;
  private final JobFiles files;
  private final Path target;

  private Gallery(Path folder, Path target) {
    files = JobFiles.in(folder);
    job = JobFolder.read(files).job().orElseThrow();
    this.target = target;
  }

  /** Draws all pictures. */
  public static void main(String[] args) throws IOException {
    Gallery gallery = new Gallery(Path.of(args[0]), Path.of(args[1]));
    Dealer english = gallery.job.dealer();
    Dealer metric = english.writing(Locale.CANADA_FRENCH, Dealer.Paper.A4, UnitSystem.METRIC);
    Dealer spanish = english.writing(Locale.forLanguageTag("es-US"));
    byte[] proposal = gallery.proposal("H01", english);
    gallery.draw("proposal", 72, proposal, 1, 2);
    gallery.draw("pages", 36, proposal, 1, 2, 3, 4, 5, 6, 7, 8);
    gallery.draw("settings", 60, gallery.settings("H01", english), 1, 2);
    gallery.draw("three-sizes", 72, gallery.threeSizes("H01", english), 1);
    gallery.draw("service", 60, gallery.service("S02", english), 1, 2);
    gallery.draw("form", 60, gallery.form("H07", english), 1, 2);
    gallery.draw("spanish", 60, gallery.proposal("H06", spanish), 1, 2);
    gallery.draw("french", 60, gallery.proposal("H11", metric), 1, 2);
  }

  private Comparison compare(String id) {
    return job.compare(job.home(id).orElseThrow());
  }

  private byte[] proposal(String id, Dealer dealer) {
    Comparison comparison = compare(id);
    return new Proposal(comparison, job.study(comparison).orElse(null), dealer, DAY).toPdf();
  }

  private byte[] settings(String id, Dealer dealer) {
    Comparison comparison = compare(id);
    return new SettingsSheet(comparison, comparison.closest(), dealer, DAY).toPdf();
  }

  private byte[] threeSizes(String id, Dealer dealer) {
    return new ComparisonPage(compare(id), dealer, DAY).toPdf();
  }

  private byte[] service(String id, Dealer dealer) {
    return new ServiceReport(job.service(compare(id)).orElseThrow(), dealer, DAY).toPdf();
  }

  private byte[] form(String id, Dealer dealer) throws IOException {
    QuotedHome visit = job.home(id).orElseThrow();
    Map<String, String> cells = SiteCells.of(files, visit.site().id()).orElseThrow();
    CarriedJob carried = new CarriedJob("", DAY, Map.of());
    return new VisitSheet(dealer, job.tariffs(), cells, carried).toPdf();
  }

  /** Draws pages side by side, four in a row at the most. */
  private void draw(String name, int dotsPerInch, byte[] pdf, int... pages) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      List<BufferedImage> images = new ArrayList<>();
      for (int page : pages) {
        images.add(renderer.renderImageWithDPI(page - 1, dotsPerInch));
      }
      ImageIO.write(sheet(images), "png", target.resolve(name + ".png").toFile());
    }
  }

  private static BufferedImage sheet(List<BufferedImage> pages) {
    int columns = Math.min(4, pages.size());
    int rows = (pages.size() + columns - 1) / columns;
    int wide = pages.get(0).getWidth() + MARGIN;
    int tall = pages.get(0).getHeight() + MARGIN;
    BufferedImage sheet =
        new BufferedImage(
            columns * wide + MARGIN, rows * tall + MARGIN, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = sheet.createGraphics();
    graphics.setColor(new Color(0xC9CFD1));
    graphics.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    for (int i = 0; i < pages.size(); i++) {
      graphics.drawImage(
          pages.get(i), MARGIN + i % columns * wide, MARGIN + i / columns * tall, null);
    }
    graphics.dispose();
    return sheet;
  }
}
