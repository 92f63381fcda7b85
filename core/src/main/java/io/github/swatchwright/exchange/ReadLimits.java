package io.github.swatchwright.exchange;

import io.github.swatchwright.argument.Require;

/**
 * How much of a file from outside is taken in, so that none can exhaust memory or time. Every
 * reader of this library keeps to {@link #USUAL} unless it is given others: a web service will want
 * less.
 *
 * @param mostBytes the longest file
 * @param mostTokens the most names, values and brackets of a JSON document
 * @param deepest the most levels of a JSON document
 * @param longestText the longest string or field, in characters
 * @param longestName the longest field name of a JSON document, in characters
 * @param longestNumber the longest number of a JSON document, in characters
 * @param mostFields the most fields of a line
 */
public record ReadLimits(
    int mostBytes,
    int mostTokens,
    int deepest,
    int longestText,
    int longestName,
    int longestNumber,
    int mostFields) {

  /** For a phone or a desktop: a shelf of 10,000 paints fits. */
  public static final ReadLimits USUAL =
      new ReadLimits(10_000_000, 2_000_000, 16, 20_000, 1_000, 100, 2_000);

  /** Refuses limits below 1. */
  public ReadLimits {
    Require.within("mostBytes", mostBytes, 1, Integer.MAX_VALUE - 1);
    Require.within("mostTokens", mostTokens, 1, Integer.MAX_VALUE);
    Require.within("deepest", deepest, 1, 100);
    Require.within("longestText", longestText, 1, Integer.MAX_VALUE);
    Require.within("longestName", longestName, 1, Integer.MAX_VALUE);
    Require.within("longestNumber", longestNumber, 1, Integer.MAX_VALUE);
    Require.within("mostFields", mostFields, 1, Integer.MAX_VALUE);
  }

  /** These limits with another longest file. */
  public ReadLimits withMostBytes(int bytes) {
    return new ReadLimits(
        bytes, mostTokens, deepest, longestText, longestName, longestNumber, mostFields);
  }
}
