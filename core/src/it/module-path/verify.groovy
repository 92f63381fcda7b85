String log = new File(basedir, 'build.log').text
assert log.count('E00 ') >= 3 : 'the program printed no recipes'
