package plan

import (
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"slices"
	"testing"

	"sutur/generator/internal/golden"
)

// The vectors are what the browser's ranking is held to as well, in site-src/test/rank.test.mjs.
const vectorFile = "testdata/vectors.json"

type rankCase struct {
	Query Query
	Want  Ranking
}

func makeVectors() (list []rankCase) {
	rnd := rand.New(rand.NewPCG(3, 5))
	x := index()
	for i := range 120 {
		q := randomQuery(rnd)
		if q.Best = 3; i%20 == 0 {
			q.Best = 0
		}
		r := Choose(x, q)
		list = append(list, rankCase{q, r})
		for range 2 { // a rare rule runs out of lines
			q.Used = slices.Clone(q.Used)
			for _, p := range r.Passages {
				q.Used = append(q.Used, [2]int{p.A, p.B})
			}
			if r.How == AsWanted {
				break
			}
			r = Choose(x, q)
			list = append(list, rankCase{q, r})
		}
	}
	return list
}

func TestVectors(t *testing.T) {
	list := makeVectors()
	how := map[int]int{}
	var b bytes.Buffer
	b.WriteByte('[')
	for i, c := range list {
		how[c.Want.How]++
		line, err := json.Marshal(c)
		if err != nil {
			t.Fatal(err)
		}
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteByte('\n')
		b.Write(line)
	}
	b.WriteString("\n]\n")
	for k := AsWanted; k <= Nowhere; k++ {
		if how[k] == 0 {
			t.Errorf("no vector has case %d: %v", k, how)
		}
	}
	golden.Check(t, vectorFile, b.Bytes())
	t.Logf("%d rankings %v", len(list), how)
}
