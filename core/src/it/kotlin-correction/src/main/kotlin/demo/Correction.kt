package demo

import io.github.swatchwright.calibrate.Correction
import io.github.swatchwright.calibrate.Corrector
import io.github.swatchwright.colour.Srgb
import io.github.swatchwright.estimate.ShelfOptics
import io.github.swatchwright.json.ShelfJson
import io.github.swatchwright.mix.Mix
import io.github.swatchwright.paint.Shelf
import io.github.swatchwright.paint.Swatch
import io.github.swatchwright.spectrum.TristimulusWeights
import java.nio.file.Path

/** What to add to a pot that came out wrong. */
fun correction(shelf: Shelf, pot: String, measured: String, target: String): Correction {
    val corrector = Corrector.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65)
    val seen = Swatch.OfSrgb(Srgb.parse(measured))
    val wanted = Swatch.OfSrgb(Srgb.parse(target))
    return corrector.correct(Mix.parse(pot, shelf), seen, seen.usualError(), wanted)
}

fun inWords(correction: Correction): String {
    val additions = correction.additions().joinToString { "${it.drops().count()} of ${it.drops().paint().name()}" }
    val advice = if (correction.startAfresh()) ", but a new pot is better" else ""
    return "add $additions: ΔE00 %.1f instead of %.1f$advice".format(correction.deltaE00(), correction.now())
}

fun main(args: Array<String>) {
    val shelf = ShelfJson.read(Path.of(args[0]))
    println(inWords(correction(shelf, args[1], args[2], args[3])))
}
