String log = new File(basedir, 'build.log').text
assert log.count('E00 ') >= 3 : 'the program printed no recipes'

def packed = new File(basedir, '../..').listFiles().find { it.name ==~ /swatchwright-core-[^-]+(-SNAPSHOT)?\.jar/ }
def jar = new java.util.zip.ZipFile(packed)
for (name in ['META-INF/LICENSE', 'META-INF/NOTICE']) {
  assert jar.getEntry(name) != null : "$packed.name lacks $name"
}
