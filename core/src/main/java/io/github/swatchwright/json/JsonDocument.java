package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import io.github.swatchwright.exchange.ReadLimits;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a JSON document (RFC 8259) into {@link JsonElement}s, within {@link ReadLimits}. */
final class JsonDocument {
  private final JsonParser parser;
  private final String source;

  private JsonDocument(JsonParser parser, String source) {
    this.parser = parser;
    this.source = source;
  }

  /** Reads a file, named by its path in messages. */
  static JsonElement read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return read(in, file.toString());
    }
  }

  /** Reads a stream of UTF-8 to its end, and leaves it open. */
  static JsonElement read(InputStream in, String source) throws IOException {
    return read(in, source, ReadLimits.USUAL);
  }

  /** The same within other limits. */
  static JsonElement read(InputStream in, String source, ReadLimits limits) throws IOException {
    byte[] bytes = in.readNBytes(limits.mostBytes() + 1);
    if (bytes.length > limits.mostBytes()) {
      throw JsonPlace.rootOf(source)
          .refuse("is longer than " + limits.mostBytes() + " bytes, the most that is read");
    }
    try {
      return parse(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString(),
          source,
          limits);
    } catch (CharacterCodingException e) {
      throw JsonPlace.rootOf(source).refuse("is not UTF-8 text");
    }
  }

  /** Reads a text, which may begin with a byte order mark. */
  static JsonElement parse(String text, String source) {
    return parse(text, source, ReadLimits.USUAL);
  }

  private static JsonElement parse(String text, String source, ReadLimits limits) {
    String document = text.startsWith("\uFEFF") ? text.substring(1) : text;
    try (JsonParser parser = factory(limits).createParser(document)) {
      return new JsonDocument(parser, source).whole();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** NaN and the infinities are let through, so that they can be refused with their path. */
  private static JsonFactory factory(ReadLimits limits) {
    return JsonFactory.builder()
        .streamReadConstraints(constraints(limits))
        .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
        .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
        .build();
  }

  private static StreamReadConstraints constraints(ReadLimits limits) {
    return StreamReadConstraints.builder()
        .maxDocumentLength(limits.mostBytes())
        .maxTokenCount(limits.mostTokens())
        .maxNestingDepth(limits.deepest())
        .maxStringLength(limits.longestText())
        .maxNameLength(limits.longestName())
        .maxNumberLength(limits.longestNumber())
        .build();
  }

  private JsonElement whole() throws IOException {
    try {
      JsonPlace root = JsonPlace.rootOf(source);
      if (parser.nextToken() == null) {
        throw root.refuse("is empty, must hold a JSON object");
      }
      JsonElement element = element(root);
      if (parser.nextToken() != null) {
        throw refuse(parser.currentTokenLocation(), "more text after the end of the document");
      }
      return element;
    } catch (JsonProcessingException e) {
      JsonLocation known = e.getLocation();
      throw refuse(
          known == null ? parser.currentLocation() : known,
          JsonMistake.inWords(e.getOriginalMessage()));
    }
  }

  private JsonInputException refuse(JsonLocation at, String complaint) {
    String place = "line " + at.getLineNr() + ", column " + at.getColumnNr();
    return new JsonInputException(source, place, complaint);
  }

  private JsonElement element(JsonPlace place) throws IOException {
    JsonContent content =
        switch (parser.currentToken()) {
          case START_OBJECT -> members(place);
          case START_ARRAY -> items(place);
          case VALUE_STRING -> new JsonContent.Text(parser.getText());
          case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonContent.Numeral(parser.getText());
          default -> new JsonContent.Literal(parser.getText());
        };
    return new JsonElement(place, content);
  }

  private JsonContent.Members members(JsonPlace place) throws IOException {
    Map<String, JsonElement> fields = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      JsonPlace field = place.field(name);
      if (fields.containsKey(name)) {
        throw field.refuse("is given twice");
      }
      parser.nextToken();
      fields.put(name, element(field));
    }
    return new JsonContent.Members(fields);
  }

  private JsonContent.Items items(JsonPlace place) throws IOException {
    List<JsonElement> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(element(place.item(items.size())));
    }
    return new JsonContent.Items(items);
  }
}
