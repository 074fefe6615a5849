package io.github.brinewright.internal.document;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDComboBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTerminalField;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.apache.pdfbox.pdmodel.interactive.form.PDVariableText;

/** The fields of a document. */
final class Form {
  private static final COSName FONT = COSName.getPDFName("Field");
  private static final String TYPED = typed(FieldLook.TYPED);

  private final PDDocument document;
  private final ParsedFonts fonts;
  private final FieldLook looks;
  private final PDAcroForm form;
  private final List<PDTerminalField> fields = new ArrayList<>();
  private final SharedFields shared;
  private final Set<String> names = new HashSet<>();

  Form(PDDocument document, ParsedFonts fonts, FieldLook looks) {
    this.document = document;
    this.fonts = fonts;
    this.looks = looks;
    form = new PDAcroForm(document);
    shared = new SharedFields(form);
  }

  /** How a program is to write what is typed. */
  private static String typed(TextStyle style) {
    Ink ink = style.ink();
    return String.format(
        Locale.ROOT,
        "/%s %.0f Tf %.2f %.2f %.2f rg",
        FONT.getName(),
        style.size(),
        ink.red(),
        ink.green(),
        ink.blue());
  }

  /** Puts a field on a page and returns what the reader touches. */
  PDAnnotationWidget add(Field field, PDPage page, PDRectangle box) throws IOException {
    if (field.shared() && shared.has(field)) {
      return shown(shared.widget(field), field, page, box);
    }
    if (!names.add(field.name())) {
      throw new IllegalArgumentException("two fields are named \"" + field.name() + "\"");
    }
    if (field.shared()) {
      fields.add(shared.begin(field));
      return shown(shared.widget(field), field, page, box);
    }
    PDTerminalField made = make(field);
    made.setPartialName(field.name());
    made.setAlternateFieldName(field.label());
    made.setRequired(field.needed());
    fields.add(made);
    return shown(made.getWidgets().get(0), field, page, box);
  }

  private PDAnnotationWidget shown(
      PDAnnotationWidget widget, Field field, PDPage page, PDRectangle box) throws IOException {
    widget.setRectangle(box);
    widget.setPage(page);
    widget.setPrinted(true);
    looks.give(widget, field);
    page.getAnnotations().add(widget);
    return widget;
  }

  private PDTerminalField make(Field field) throws IOException {
    return switch (field.kind()) {
      case TEXT -> typed(new PDTextField(form), field);
      case CHOICE -> {
        PDComboBox box = new PDComboBox(form);
        box.setOptions(
            field.choices().stream().map(Field.Choice::value).toList(),
            field.choices().stream().map(Field.Choice::name).toList());
        yield typed(box, field);
      }
      case TICK, ONE_OF -> throw new IllegalStateException("shared fields are made apart");
      case SIGNATURE -> new PDSignatureField(form);
    };
  }

  /** Sets the value without drawing it: the look is our own. */
  private static PDTerminalField typed(PDVariableText made, Field field) {
    COSDictionary entries = made.getCOSObject();
    entries.setString(COSName.DA, TYPED);
    if (!field.value().isEmpty()) {
      entries.setItem(COSName.V, new COSString(field.value()));
    }
    return made;
  }

  /** Completes the form; a document without fields gets none. */
  void write() throws IOException {
    if (fields.isEmpty()) {
      return;
    }
    shared.write();
    PDResources resources = new PDResources();
    resources.put(FONT, FieldFont.of(document, fonts));
    form.setDefaultResources(resources);
    form.setDefaultAppearance(TYPED);
    form.setFields(List.copyOf(fields));
    document.getDocumentCatalog().setAcroForm(form);
  }
}
