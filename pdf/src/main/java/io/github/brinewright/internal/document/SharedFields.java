package io.github.brinewright.internal.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDButton;
import org.apache.pdfbox.pdmodel.interactive.form.PDCheckBox;
import org.apache.pdfbox.pdmodel.interactive.form.PDRadioButton;

/**
 * Fields that stand at several places of a document: what is ticked or marked at one of them shows
 * at the others, without a script, since all are one field to the program of the reader.
 */
final class SharedFields {
  /** One field with its places. */
  private static final class Shared {
    private final Field.Kind kind;
    private final PDButton button;
    private final List<PDAnnotationWidget> widgets = new ArrayList<>();
    private final Set<String> labels = new LinkedHashSet<>();

    private Shared(Field.Kind kind, PDButton button) {
      this.kind = kind;
      this.button = button;
    }
  }

  private final PDAcroForm form;
  private final Map<String, Shared> byName = new LinkedHashMap<>();

  SharedFields(PDAcroForm form) {
    this.form = form;
  }

  /** Whether a field of the name and kind has a place already. */
  boolean has(Field field) {
    Shared known = byName.get(field.name());
    return known != null && known.kind == field.kind();
  }

  /** A new field, without a place yet. */
  PDButton begin(Field field) {
    PDButton button = field.kind() == Field.Kind.TICK ? new PDCheckBox(form) : marked();
    button.setPartialName(field.name());
    button.setRequired(field.needed());
    byName.put(field.name(), new Shared(field.kind(), button));
    return button;
  }

  private PDRadioButton marked() {
    PDRadioButton button = new PDRadioButton(form);
    button.setRadiosInUnison(true);
    return button;
  }

  /** One more place of a field; what is read aloud for it stands with it. */
  PDAnnotationWidget widget(Field field) {
    Shared shared = byName.get(field.name());
    PDAnnotationWidget widget = new PDAnnotationWidget();
    COSDictionary entries = widget.getCOSObject();
    entries.setString(COSName.CONTENTS, field.label());
    entries.setString(COSName.TU, field.label());
    shared.widgets.add(widget);
    shared.labels.add(field.label());
    return widget;
  }

  /** Joins the places of each field. */
  void write() {
    for (Shared shared : byName.values()) {
      shared.button.setWidgets(shared.widgets);
      shared.button.setAlternateFieldName(String.join("; ", shared.labels));
      shared.button.getCOSObject().setItem(COSName.V, COSName.Off);
    }
  }
}
