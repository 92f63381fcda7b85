package io.github.swatchwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class NamedRegionTest {
  private static List<NamedRegion> read(String text) {
    return NamedRegion.read(text.getBytes(StandardCharsets.UTF_8), "picked.csv");
  }

  @Test
  void namesAndRegionsAreReadInAnyOrderOfColumns() {
    assertThat(read("name,region\r\n\"Rust, old\",\"10,20,5%,5%\"\r\n\r\n'=Grey,\"1,2,3,4\"\r\n"))
        .containsExactly(
            new NamedRegion(2, "Rust, old", "10,20,5%,5%"), new NamedRegion(4, "=Grey", "1,2,3,4"));
    assertThat(read("srgb;Region;note;NAME\n#fff;1,2,3,4;x;Rust\n"))
        .containsExactly(new NamedRegion(2, "Rust", "1,2,3,4"));
  }

  @Test
  void whatIsNoListOfRegionsIsRefused() {
    assertThatThrownBy(() -> read("")).hasMessageContaining("picked.csv: must begin with a line");
    assertThatThrownBy(() -> read("name,srgb\nRust,#fff\n")).hasMessageContaining("'region'");
    assertThatThrownBy(() -> read("name,region\n")).hasMessageContaining("has no region");
    assertThatThrownBy(
            () -> read("name,region\nRust,1,2,3,4\n ,\"1,2,3,4\"\nA,\"1,2,3,4\"\nA,\"1,2,3,4\"\n"))
        .hasMessageContaining("line 2: has 5 fields, must have 2")
        .hasMessageContaining("line 3: has no name")
        .hasMessageContaining("line 5: name is 'A', as on line 4");
  }
}
