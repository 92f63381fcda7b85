package io.github.swatchwright.calibrate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A small part of the tables in every build; {@link CardTables} prints them in full. */
class CardTablesTest {
  private static final long SEED = 200;

  private final CardTables tables = new CardTables();

  @Test
  void strongOrganicsAreBelievedAndNotAccused() {
    tables.strongOrganics(SEED, 14);
    tables.print();
    CardTables.Row one = tables.row("strong organics, colour, one 1:5");
    assertThat(one.accused).isZero();
    assertThat(one.errors.getPercentile(50))
        .isLessThan(0.5 * tables.row("strong organics, colour, no card").errors.getPercentile(50));
  }

  /**
   * Ladders of one day foretell recipes of another; more recipes of that day tell the strengths.
   */
  @Test
  void ladderRungsAreNotAccusedAndRecipesTellHowStrongPaintsAreToday() {
    tables.days(SEED, 8);
    tables.print();
    for (String family : new String[] {"colourants without masstone", "ready-mixed"}) {
      CardTables.Row ladders = tables.row(family + ", ladders");
      CardTables.Row both = tables.row(family + ", ladders and recipes");
      assertThat(ladders.accused + both.accused).isLessThanOrEqualTo(1);
      assertThat(ladders.unusable + both.unusable).isZero();
      assertThat(both.errors.getPercentile(50)).isLessThan(0.8 * ladders.errors.getPercentile(50));
    }
  }
}
