String log = new File(basedir, 'build.log').text
assert log =~ /add \d+ of .*E00 [0-9.]+ instead of/ : 'the program printed no addition'
