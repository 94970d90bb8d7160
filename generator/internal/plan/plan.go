// Package plan computes what a family cannot compute by hand: which lines fit a child best (rank.go), which rule to teach
// next (units.go, next.go), whether the child is ready for it (ready.go), which rules are due for review (review.go), and
// what to do today (today.go). Everything is a pure function of the passage index and of what was practised.
//
// The browser does the same in TypeScript (site-src/app/plan); testdata/vectors.json holds both to the same results.
// Therefore all reckoning here is in whole numbers: a division drops the remainder.
//
// course.go plays a child's whole way through the rules, and is the proof that the parts fit together.
package plan
