package io.github.swatchwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/**
 * The two fields that a stored document begins with: what it is, and by which version of the
 * format.
 *
 * @param format the name of the format
 * @param version its version
 */
record DocumentHead(String format, int version) {

  void check(JsonFields fields) {
    JsonElement name = fields.required("format");
    if (!name.text().equals(format)) {
      throw name.refuse("is " + OneLine.quote(name.text()) + ", must be \"" + format + "\"");
    }
    JsonElement number = fields.required("version");
    double given = number.number();
    if (given != version) {
      throw number.refuse(
          "is "
              + number.content().inWords()
              + ", must be "
              + version
              + ", the version that is known");
    }
  }

  void write(JsonGenerator json) throws IOException {
    json.writeStringField("format", format);
    json.writeNumberField("version", version);
  }
}
