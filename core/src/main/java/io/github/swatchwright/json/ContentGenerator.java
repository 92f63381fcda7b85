package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps what is written as values instead of text, so that a result can be shown in another form
 * without being read again. The generator behind it throws the text away, and checks that objects
 * and lists are closed as they were opened.
 */
final class ContentGenerator extends JsonGeneratorDelegate {
  private static final JsonPlace ROOT = JsonPlace.rootOf("the result");

  /** An object or a list that is still open. */
  private static final class Open {
    private final Map<String, JsonElement> fields = new LinkedHashMap<>();
    private final List<JsonElement> items = new ArrayList<>();
    private String field = "";
  }

  private final Deque<Open> open = new ArrayDeque<>();

  private ContentGenerator(JsonGenerator checks) {
    super(checks);
    open.push(new Open());
  }

  /** The object with those fields. */
  static JsonElement contentOf(JsonOutput.Fields fields) {
    try (ContentGenerator json =
        new ContentGenerator(new JsonFactory().createGenerator(Writer.nullWriter()))) {
      json.writeStartObject();
      fields.write(json);
      json.writeEndObject();
      return json.open.element().items.get(0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void keep(JsonContent content) {
    Open inside = open.element();
    JsonElement element = new JsonElement(ROOT, content);
    if (inside.field.isEmpty()) {
      inside.items.add(element);
    } else {
      inside.fields.put(inside.field, element);
      inside.field = "";
    }
  }

  @Override
  public void writeStartObject() throws IOException {
    super.writeStartObject();
    open.push(new Open());
  }

  @Override
  public void writeEndObject() throws IOException {
    super.writeEndObject();
    keep(new JsonContent.Members(open.pop().fields));
  }

  @Override
  public void writeStartArray() throws IOException {
    super.writeStartArray();
    open.push(new Open());
  }

  @Override
  public void writeEndArray() throws IOException {
    super.writeEndArray();
    keep(new JsonContent.Items(open.pop().items));
  }

  @Override
  public void writeFieldName(String name) throws IOException {
    super.writeFieldName(name);
    open.element().field = name;
  }

  @Override
  public void writeString(String text) throws IOException {
    super.writeString(text);
    keep(new JsonContent.Text(text));
  }

  @Override
  public void writeNumber(int value) throws IOException {
    super.writeNumber(value);
    keep(new JsonContent.Numeral(Integer.toString(value)));
  }

  @Override
  public void writeNumber(long value) throws IOException {
    super.writeNumber(value);
    keep(new JsonContent.Numeral(Long.toString(value)));
  }

  @Override
  public void writeNumber(double value) throws IOException {
    super.writeNumber(value);
    keep(new JsonContent.Numeral(Double.toString(value)));
  }

  @Override
  public void writeNumber(String digits) throws IOException {
    super.writeNumber(digits);
    keep(new JsonContent.Numeral(digits));
  }

  @Override
  public void writeBoolean(boolean value) throws IOException {
    super.writeBoolean(value);
    keep(new JsonContent.Literal(Boolean.toString(value)));
  }

  @Override
  public void writeRawValue(String word) throws IOException {
    super.writeRawValue(word);
    keep(new JsonContent.Literal(word));
  }
}
