// Package plan computes which lines fit a child best (rank.go) and in which order lessons are
// taught (sequence.go). The lines are a pure function of the passage index, the order one of the
// rules and the text.
//
// The build proposes lines on lesson pages and puts the lessons in order; the browser ranks lines
// for the child in hand, in TypeScript (site-src/app/plan), where the plan of the day, readiness
// and reviews are too. testdata/vectors.json holds both rankings to the same results. Therefore all
// reckoning here is in whole numbers: a division drops the remainder.
package plan
