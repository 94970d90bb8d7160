package plan

import (
	"testing"

	"sutur/generator/internal/recite"
)

// TestScore: the weights, each sum worked out by hand from what score promises. All is at rest in
// the base: 15 of 15 to 30 words, three letters a word, a learner past the beginning, nothing
// found.
func TestScore(t *testing.T) {
	base := candidate{at: 5000, place: 5000, words: 15, letters: 45}
	for _, c := range []struct {
		name  string
		level int
		plain bool // no focus
		with  func(*candidate)
		want  int
	}{
		// Nearness 4 × 100, at the place 15 × 4.
		{"at the place", 4, false, func(c *candidate) {}, 400 + 60},
		// Nearness 8 × 100, at the place 15 × 8.
		{"plain reading at the place", 4, true, func(c *candidate) {}, 800 + 120},
		// 4 places of 30.
		{"four places", 4, false, func(c *candidate) { c.focus = 4 }, 460 + 120},
		// 8 places of 30, 2 of 6.
		{"ten places", 4, false, func(c *candidate) { c.focus = 10 }, 460 + 240 + 12},
		// 8 places of 30, 8 of 6; the other four are worth nothing.
		{"twenty places", 4, false, func(c *candidate) { c.focus = 20 }, 460 + 240 + 48},
		// 3 for each hundredth.
		{"half can be read", 4, false, func(c *candidate) { c.share = 50 }, 460 + 150},
		{"two rules due", 4, false, func(c *candidate) { c.due = 2 }, 460 + 2*25},
		{"begins with a verse", 4, false, func(c *candidate) { c.whole = true }, 460 + 30},
		{"ends with a verse", 4, false, func(c *candidate) { c.ends = true }, 460 + 20},
		// 600/12 = 50: 4 × (100 − 50); 600/500 = 1.
		{"600 words ahead", 4, false, func(c *candidate) { c.at = 5600 }, 200 - 1},
		// 1/12 = 0: 4 × 100, and no more the place itself.
		{"one word ahead", 4, false, func(c *candidate) { c.at = 5001 }, 400},
		// 100 words back count as 400: 400/12 = 33, 4 × (100 − 33); 400/500 = 0.
		{"100 words back", 4, false, func(c *candidate) { c.at = 4900 }, 268},
		// 600/12 = 50: 8 × (100 − 50); 600/500 = 1.
		{"plain reading 600 words ahead", 4, true, func(c *candidate) { c.at = 5600 }, 400 - 1},
		// Beyond 1,200 words nearness is nothing; 5000/500 = 10.
		{"5,000 words ahead", 4, false, func(c *candidate) { c.at = 10000 }, -10},
		// 100 × 75/15 = 500, 200 more than three a word; (4 − 0) × 200/10.
		{"long words, no lesson taught", 0, false, func(c *candidate) { c.letters = 75 }, 460 - 80},
		// (4 − 3) × 200/10.
		{"long words, three lessons", 3, false, func(c *candidate) { c.letters = 75 }, 460 - 20},
		{"long words, four lessons", 4, false, func(c *candidate) { c.letters = 75 }, 460},
		// 100 × 50/15 = 333, 33 more; 3 × 33 = 99, 99/10 = 9.
		{"remainders fall", 1, false, func(c *candidate) { c.letters = 50 }, 460 - 9},
		// 20 − 15.
		{"twenty words", 4, false, func(c *candidate) { c.words, c.letters = 20, 60 }, 460 - 5},
		// 35 − 15, and 8 for each of the 5 over 30.
		{"too many words", 4, false, func(c *candidate) { c.words, c.letters = 35, 105 }, 460 - 20 - 40},
		// 4 × 30 + 3 × 62 + 25 + 400 + 60 + 30 + 20 − (18 − 15) = 838; 100 × 72/18 = 400: 2 ×
		// 100/10 = 20 less.
		{"all together", 2, false, func(c *candidate) {
			c.focus, c.share, c.due, c.whole, c.ends, c.words, c.letters = 4, 62, 1, true, true, 18, 72
		}, 818},
	} {
		q := Query{Level: c.level, Min: MinWords, Max: MaxWords, Short: MinWords, Focus: []recite.RuleID{recite.Qalqalah}}
		if c.plain {
			q.Focus = nil
		}
		p := base
		if c.with(&p); q.score(&p) != c.want {
			t.Errorf("%s: %d, want %d", c.name, q.score(&p), c.want)
		}
	}
}

// TestScoreOfLoad: the places aimed at and short passages, each sum worked out by hand. At rest are
// 8 places, 8 to 12 aimed at, in 15 of 15 to 30 words: 460 + 8 × 30 = 700.
func TestScoreOfLoad(t *testing.T) {
	for _, c := range []struct {
		name  string
		focus int
		words int
		with  func(*Query)
		want  int
	}{
		{"as few as aimed at", 8, 15, nil, 700},
		{"as many as aimed at", 12, 15, nil, 700 + 4*6},
		// 2 places of 30 are not there, and cost 10 besides.
		{"two too few", 6, 15, nil, 700 - 2*30 - 2*10},
		// 8 of 30, 6 of 6, less 2 × 60.
		{"two too many", 14, 15, nil, 460 + 240 + 36 - 120},
		// 8 of 30, 8 of 6; 8 over 12.
		{"twenty", 20, 15, nil, 460 + 240 + 48 - 480},
		{"twenty, no bound above", 20, 15, func(q *Query) { q.Most = 0 }, 460 + 240 + 48},
		{"six, no bound below", 6, 15, func(q *Query) { q.Fewest = 0 }, 460 + 180},
		// 9 words under 15.
		{"six words", 8, 6, nil, 700 - 9*4},
		{"a surah of six words, nothing to be shortened", 8, 6, func(q *Query) { q.Short = 15 }, 700},
		{"sixteen words", 8, 16, nil, 700 - 1},
	} {
		q := Query{Level: Beginner, Min: MinWords, Max: MaxWords, Short: 4, Fewest: 8, Most: 12, Focus: []recite.RuleID{recite.Qalqalah}}
		if c.with != nil {
			c.with(&q)
		}
		p := candidate{at: 5000, place: 5000, words: c.words, letters: 3 * c.words, focus: c.focus}
		if got := q.score(&p); got != c.want {
			t.Errorf("%s: %d, want %d", c.name, got, c.want)
		}
	}
}
