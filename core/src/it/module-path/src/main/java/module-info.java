/** A program that uses the library as a module. */
module demo {
  requires io.github.swatchwright;
}
