package passage

import (
	"encoding/binary"
	"errors"
	"fmt"
	"math/bits"
	"slices"
)

// The index file, before compression. All numbers are bytes but those of the head, which are little endian:
//
//	"SPI2"            4 bytes
//	phrases, pauses   2 bytes each
//	rules             1 byte, then 1 byte of nothing
//	words             a byte a phrase
//	letters           a byte a phrase
//	ends              a byte a phrase: 0 split, 1 pause sign, 2 verse end, 3 surah end
//	changes           a byte a rule: 1 if stopping at a pause changes its places anywhere, 2 if starting after one does
//	counts            for each rule a byte a phrase
//	at stop           for each rule that has 1 a signed byte a pause
//	at start          for each rule that has 2 a signed byte a pause
//
// Pauses are the phrases that end with 1, in order. Rules are in the order of recite.RuleID. Surah, verse, word, page and
// juz of a phrase follow from the ends and from the catalogue.
const magic = "SPI2"

const headLen = 10

// Encode returns the index file's bytes.
func (x *Index) Encode() []byte {
	n, k, rules := len(x.Words), len(x.AtStop[0]), len(x.Counts)
	b := make([]byte, 0, headLen+3*n+rules*(n+2*k+1))
	b = append(b, magic...)
	b = binary.LittleEndian.AppendUint16(b, uint16(n))
	b = binary.LittleEndian.AppendUint16(b, uint16(k))
	b = append(b, byte(rules), 0)
	b = append(b, x.Words...)
	b = append(b, x.Letters...)
	for _, e := range x.End {
		b = append(b, byte(e))
	}
	tables := [][][]int8{x.AtStop, x.AtFrom}
	kept := make([]byte, rules)
	for bit, table := range tables {
		for r, row := range table {
			if changes(row) {
				kept[r] |= 1 << bit
			}
		}
	}
	b = append(b, kept...)
	for _, row := range x.Counts {
		b = append(b, row...)
	}
	for bit, table := range tables {
		for r, row := range table {
			if kept[r]>>bit&1 == 0 {
				continue
			}
			for _, d := range row {
				b = append(b, byte(d))
			}
		}
	}
	return b
}

// changes reports whether a row of AtStop or AtFrom changes anything.
func changes(row []int8) bool {
	return slices.ContainsFunc(row, func(d int8) bool { return d != 0 })
}

// Decode reads what Encode wrote. Damaged or cut-off bytes are an error.
func Decode(b []byte) (*Index, error) {
	if len(b) < headLen || string(b[:4]) != magic {
		return nil, errors.New("this is no passage index")
	}
	n, k, rules := int(binary.LittleEndian.Uint16(b[4:])), int(binary.LittleEndian.Uint16(b[6:])), int(b[8])
	least := headLen + 3*n + rules*(n+1)
	if len(b) < least || n == 0 || rules == 0 {
		return nil, fmt.Errorf("the passage index has %d bytes; its head asks for %d or more", len(b), least)
	}
	kept := b[headLen+3*n:][:rules]
	want := least
	for _, c := range kept {
		if c > 3 {
			return nil, fmt.Errorf("a rule of the passage index changes by %d; 0 to 3 are accepted", c)
		}
		want += bits.OnesCount8(c) * k
	}
	if len(b) != want {
		return nil, fmt.Errorf("the passage index has %d bytes; its head asks for %d", len(b), want)
	}
	b = b[headLen:]
	take := func(n int) []byte { p := b[:n:n]; b = b[n:]; return p }
	x := &Index{Words: take(n), Letters: take(n)}
	for _, e := range take(n) {
		if e > byte(SurahEnd) {
			return nil, fmt.Errorf("a phrase of the passage index ends with %d; 0 to 3 are accepted", e)
		}
		x.End = append(x.End, End(e))
	}
	if got := x.derive(); got != k {
		return nil, fmt.Errorf("the passage index has %d pauses; its head says %d", got, k)
	}
	take(rules)
	for range rules {
		x.Counts = append(x.Counts, take(n))
	}
	signed := func(bit byte) ([][]int8, error) {
		rows := make([][]int8, rules)
		for r := range rows {
			rows[r] = make([]int8, k)
			if kept[r]&bit == 0 {
				continue
			}
			for i, d := range take(k) {
				rows[r][i] = int8(d)
			}
			if !changes(rows[r]) {
				return nil, errors.New("the passage index keeps changes of a rule that has none")
			}
		}
		return rows, nil
	}
	var err error
	if x.AtStop, err = signed(1); err != nil {
		return nil, err
	}
	if x.AtFrom, err = signed(2); err != nil {
		return nil, err
	}
	return x, nil
}
