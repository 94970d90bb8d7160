package verify

import (
	"math/rand/v2"
	"slices"
	"testing"

	"sutur/generator/internal/recite"
)

// A reading holds exactly the events whose boundary it joins, stops or starts at, worked out here
// from the meaning of When and Before alone, for the default stops and for stops chosen at random.
func TestReadingHoldsByItsStops(t *testing.T) {
	tx := load(t)
	e := recite.New(tx)
	rnd := rand.New(rand.NewPCG(1, 2))
	for round := range 2 {
		r := recite.Reading{Join: map[int]bool{}, Stop: map[[2]int]bool{}}
		for v := range tx.Verses {
			if round == 0 {
				break
			}
			if v+1 < len(tx.Verses) && rnd.IntN(3) == 0 {
				r.Join[v] = true
			}
			for w := range tx.Verses[v].Words[1:] {
				if rnd.IntN(5) == 0 {
					r.Stop[[2]int{v, w}] = true
				}
			}
		}
		for v := range tx.Verses {
			last := len(tx.Verses[v].Words) - 1
			stops := func(w int) bool {
				if w == last {
					return !r.Join[v]
				}
				return r.Stop[[2]int{v, w}]
			}
			starts := func(w int) bool {
				if w == 0 {
					// a surah is begun, whatever came before: between the two stands the basmala
					return v == 0 || !r.Join[v-1] || !joinsNext(tx, v-1)
				}
				return stops(w - 1)
			}
			var want []recite.Event
			for _, x := range e.Verse(nil, v) {
				broken := stops(int(x.Word))
				if x.Before {
					broken = starts(int(x.Word))
				}
				if x.When == recite.Always || (x.When == recite.Join) != broken {
					want = append(want, x)
				}
			}
			if got := e.Reading(nil, v, r); !slices.Equal(got, want) {
				t.Fatalf("round %d, %d:%d: %d events, want %d", round, tx.Verses[v].Surah, tx.Verses[v].Ayah, len(got), len(want))
			}
		}
	}
}
