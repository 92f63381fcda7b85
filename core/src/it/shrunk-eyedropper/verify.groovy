String log = new File(basedir, 'build.log').text
assert log.contains('E00 ') : 'the shrunk program printed no recipe'

def shrunk = new File(basedir, 'target/shrunk.jar')
println "shrunk eyedropper: ${shrunk.length()} bytes"
// Whole, the library and what it needs are about 4 MB.
assert shrunk.length() < 1_500_000
def jar = new java.util.zip.ZipFile(shrunk)
for (name in ['META-INF/LICENSE', 'META-INF/NOTICE']) {
  assert jar.getEntry(name) != null : "shrunk.jar lacks $name"
}
