package plan

import (
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"os"
	"slices"
	"testing"

	"sutur/generator/internal/recite"
)

// The vectors are what the browser's code is held to as well, in package e2e. They are made by this package and kept, so
// that a change of results is seen; UPDATE_GOLDEN=1 writes them anew.
const vectorFile = "testdata/vectors.json"

type vectors struct {
	Lessons  []Lesson
	Units    []Unit
	Rank     []rankCase
	Sequence []sequenceCase
	Today    []todayCase
}

type rankCase struct {
	Query Query
	Want  Ranking
}

type sequenceCase struct {
	Places []int
	Taught []bool
	Want   []Step
	Next   []Option
}

type todayCase struct {
	Learner   Learner
	Criterion Criterion
	Want      Plan
	Known     []int       // KnownDay of each unit taught
	Ready     []Readiness // of each unit taught
	Reviews   []Schedule  // of the rules of each unit taught, known since it was begun
}

func makeVectors(t *testing.T) vectors {
	rnd := rand.New(rand.NewPCG(3, 5))
	x, units := index(), Units(ruleList(t), grouped)
	v := vectors{Lessons: grouped, Units: units}
	for i := range 120 {
		q := randomQuery(rnd)
		if q.Best = 3; i%20 == 0 {
			q.Best = 0
		}
		r := Choose(x, q)
		v.Rank = append(v.Rank, rankCase{q, r})
		for range 2 { // a rare rule runs out of lines
			q.Used = slices.Clone(q.Used)
			for _, p := range r.Passages {
				q.Used = append(q.Used, [2]int{p.A, p.B})
			}
			if r.How == AsWanted {
				break
			}
			r = Choose(x, q)
			v.Rank = append(v.Rank, rankCase{q, r})
		}
	}
	rare := Rare(Places(x, 0, 6235))
	for i := range 24 {
		first := rnd.IntN(6000)
		c := sequenceCase{Places: UnitPlaces(units, Places(x, first, first+rnd.IntN(236))), Taught: make([]bool, len(units))}
		steps := Sequence(units, c.Places, c.Taught)
		n := rnd.IntN(len(units))
		for _, s := range steps[:n] {
			c.Taught[s.Unit] = true
		}
		if rnd.IntN(3) == 0 { // the adult went another way
			c.Taught[rnd.IntN(len(units))] = true
		}
		c.Want, c.Next = Sequence(units, c.Places, c.Taught), Next(units, c.Places, c.Taught)
		v.Sequence = append(v.Sequence, c)

		l := Learner{Settled: rnd.IntN(2) == 0, Taught: []Taught{}}
		for _, s := range steps {
			l.Order = append(l.Order, s.Unit)
		}
		day := 0
		if i%8 == 0 { // still settling in
			n, l.Settled = 0, false
			for d := range rnd.IntN(3) {
				l.Log = append(l.Log, Session{Day: d, Rule: -1})
			}
		}
		for k := range min(n, 10) {
			t := Taught{steps[k].Unit, day, -1}
			if rnd.IntN(6) == 0 {
				t.Known = day + rnd.IntN(5)
			}
			l.Taught = append(l.Taught, t)
			for range rnd.IntN(6) {
				a := rnd.IntN(x.Len() - 9)
				s := Session{Day: day, Rule: -1, Help: rnd.IntN(8) / 3}
				rules := units[t.Unit].Rules
				if rnd.IntN(6) == 0 {
					rules = units[l.Taught[0].Unit].Rules
				}
				s.Rule = int(rules[rnd.IntN(len(rules))])
				for r := range s.Places {
					s.Places[r] = x.Count(recite.RuleID(r), a, a+rnd.IntN(8))
				}
				s.Found, s.Missed = rnd.IntN(20), rnd.IntN(3)
				l.Log = append(l.Log, s)
				day += rnd.IntN(4)
			}
		}
		l.Day = day + rnd.IntN(30)
		w := todayCase{Learner: l, Criterion: DefaultCriterion}
		if rnd.IntN(4) == 0 {
			w.Criterion = Criterion{Sessions: 2, Days: 1, Percent: 70, Last: 3}
		}
		w.Want = Today(units, rare, l, w.Criterion)
		for _, t := range l.Taught {
			w.Known = append(w.Known, KnownDay(units[t.Unit], rare, t.Since, l.Log, w.Criterion))
			w.Ready = append(w.Ready, Ready(units[t.Unit], rare, t.Since, l.Log, w.Criterion))
			for _, r := range units[t.Unit].Rules {
				w.Reviews = append(w.Reviews, Review(r, t.Since, l.Log))
			}
		}
		v.Today = append(v.Today, w)
	}
	return v
}

func TestVectors(t *testing.T) {
	v := makeVectors(t)
	do, how := map[int]int{}, map[int]int{}
	for _, c := range v.Today {
		do[c.Want.Do]++
	}
	for _, c := range v.Rank {
		how[c.Want.How]++
	}
	for k := range 4 {
		if do[k] == 0 || how[k] == 0 {
			t.Errorf("no vector has case %d: to do %v, ranked %v", k, do, how)
		}
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	if err := e.Encode(v); err != nil {
		t.Fatal(err)
	}
	if os.Getenv("UPDATE_GOLDEN") == "1" {
		if err := os.WriteFile(vectorFile, b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(vectorFile)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(b.Bytes(), want) {
		t.Errorf("the results are not those of %s; look at what changed, then run with UPDATE_GOLDEN=1", vectorFile)
	}
	t.Logf("%d rankings %v, %d sequences, %d days %v", len(v.Rank), how, len(v.Sequence), len(v.Today), do)
}
