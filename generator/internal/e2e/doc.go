// Package e2e drives the built site in real browsers, as its users would: a whole session, without
// a network, below any path, with damaged data. It has tests only.
//
// The tests build the site once, in memory, serve it on the loopback address and give every test a
// browser profile of its own in one shared browser. What has to be alike in Chromium, Firefox and
// WebKit is tested in all three, in the files engine_*_test.go; the rest in Chromium. Where a
// browser is missing the tests fail, because a check that is left out silently is worth nothing.
package e2e
