// Package e2e drives the built site in a real Chromium, as its users would: a
// whole session, without a network, below any path, with damaged data. It has
// tests only.
//
// The tests build the site once, in memory, serve it on the loopback address
// and give every test a browser profile of its own in one shared browser.
// Chromium is found on the path, or named by the variable CHROMIUM; without it
// the tests fail, because a check that is left out silently is worth nothing.
package e2e
