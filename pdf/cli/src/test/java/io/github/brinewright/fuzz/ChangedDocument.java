package io.github.brinewright.fuzz;

import io.github.brinewright.job.Job;
import io.github.brinewright.job.JobFiles;
import io.github.brinewright.job.JobFolder;
import io.github.brinewright.proposal.Proposals;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A proposal or a form with some of its objects changed, and its structure so far whole that it
 * opens: values, types, names, counts, links in circles, contents of streams.
 */
final class ChangedDocument {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
  private static final List<byte[]> GOOD = good();

  /** Where our reader looks. */
  private static final Set<String> READ =
      Set.of(
          "AcroForm",
          "Fields",
          "Kids",
          "Parent",
          "Names",
          "EmbeddedFiles",
          "EF",
          "F",
          "UF",
          "T",
          "TU",
          "V",
          "DV",
          "FT",
          "Ff",
          "Opt",
          "I",
          "Lang",
          "Root",
          "Pages",
          "Metadata",
          "Type",
          "Filter",
          "Length",
          "DecodeParms",
          "DA",
          "Limits",
          "Count",
          "AF");

  private final Choices choices;
  private final List<COSBase> containers = new ArrayList<>();

  private ChangedDocument(Choices choices) {
    this.choices = choices;
  }

  private static List<byte[]> good() {
    Job job = JobFolder.read(JobFiles.of(DemoFiles.texts())).job().orElseThrow();
    Proposals proposals = Proposals.of(job);
    return List.of(
        proposals.write(job.homes().get(0), DAY), proposals.form(job.homes().get(0), DAY));
  }

  static byte[] of(Choices choices) {
    byte[] good = GOOD.get(choices.below(GOOD.size()));
    try (PDDocument document = Loader.loadPDF(good)) {
      new ChangedDocument(choices).change(document);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return bytes(out.toByteArray(), choices);
    } catch (IOException | RuntimeException | StackOverflowError unsaved) {
      return good;
    }
  }

  /** In some, bytes of the file itself are changed too. */
  private static byte[] bytes(byte[] pdf, Choices choices) {
    if (choices.below(8) == 1) {
      for (int i = choices.below(6); i >= 0; i--) {
        pdf[(choices.below(65_536) * 65_536 + choices.below(65_536) & 0x7FFFFFFF) % pdf.length] =
            (byte) choices.below(256);
      }
    }
    return pdf;
  }

  private void change(PDDocument document) throws IOException {
    COSDictionary root = document.getDocumentCatalog().getCOSObject();
    collect(root, 0);
    for (int i = 1 + choices.below(4); i > 0; i--) {
      COSBase container = containers.get(choices.below(containers.size()));
      if (container instanceof COSArray array && array.size() > 0) {
        change(array);
      } else if (container instanceof COSDictionary dictionary && dictionary.size() > 0) {
        change(dictionary);
      }
    }
  }

  /** What can be reached by the names that are read, and no more than that. */
  private void collect(COSBase base, int depth) {
    COSBase container = base instanceof COSObject object ? object.getObject() : base;
    if (depth > 8 || containers.stream().anyMatch(each -> each == container)) {
      return;
    }
    if (container instanceof COSArray array) {
      containers.add(array);
      array.forEach(each -> collect(each, depth + 1));
    } else if (container instanceof COSDictionary dictionary) {
      containers.add(dictionary);
      dictionary.entrySet().stream()
          .filter(entry -> READ.contains(entry.getKey().getName()))
          .forEach(entry -> collect(entry.getValue(), depth + 1));
    }
  }

  private void change(COSArray array) {
    int at = choices.below(array.size());
    switch (choices.below(4)) {
      case 0 -> array.remove(at);
      case 1 -> array.add(array.get(choices.below(array.size())));
      default -> array.set(at, value());
    }
  }

  private void change(COSDictionary dictionary) throws IOException {
    List<COSName> names =
        dictionary.keySet().stream().filter(name -> READ.contains(name.getName())).toList();
    if (names.isEmpty()) {
      return;
    }
    COSName name = names.get(choices.below(names.size()));
    switch (choices.below(6)) {
      case 0 -> dictionary.removeItem(name);
      case 1 -> dictionary.setItem(names.get(choices.below(names.size())), dictionary);
      case 2 -> dictionary.setString(name, choices.text());
      case 3 -> content(dictionary);
      default -> dictionary.setItem(name, value());
    }
  }

  private void content(COSDictionary dictionary) throws IOException {
    if (dictionary instanceof COSStream stream) {
      byte[] before = stream.createInputStream().readAllBytes();
      byte[] after = new Mutator(choices.below(65_536)).mutate(before);
      try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
        out.write(after);
      }
    }
  }

  private COSBase value() {
    return switch (choices.below(9)) {
      case 0 -> COSNull.NULL;
      case 1 -> COSInteger.get(choices.of(0, -1, 1, Integer.MAX_VALUE, Integer.MIN_VALUE));
      case 2 -> new COSFloat(choices.of(0f, -1.5f, 3e38f));
      case 3 -> COSName.getPDFName(choices.of("Tx", "Ch", "Btn", "Sig", "x", "FlateDecode"));
      case 4 -> new COSArray();
      case 5 -> new COSDictionary();
      case 6 -> COSBoolean.getBoolean(true);
      case 7 -> containers.get(choices.below(containers.size()));
      default -> new COSString(choices.text());
    };
  }
}
