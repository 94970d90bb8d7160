package passage

import (
	"encoding/binary"
	"errors"
	"fmt"
)

// The index file, before compression. All numbers are bytes but those of the head, which are little endian:
//
//	"SPI1"            4 bytes
//	phrases, pauses   2 bytes each
//	rules             1 byte, then 1 byte of nothing
//	words             a byte a phrase
//	letters           a byte a phrase
//	ends              a byte a phrase: 0 split, 1 pause sign, 2 verse end, 3 surah end
//	counts            for each rule a byte a phrase
//	at stop           for each rule a signed byte a pause
//	at start          for each rule a signed byte a pause
//
// Pauses are the phrases that end with 1, in order. Rules are in the order of recite.RuleID. Surah, verse, word, page and
// juz of a phrase follow from the ends and from the catalogue.
const magic = "SPI1"

const headLen = 10

// Encode returns the index file's bytes.
func (x *Index) Encode() []byte {
	n, k, rules := len(x.Words), len(x.AtStop[0]), len(x.Counts)
	b := make([]byte, 0, headLen+3*n+rules*(n+2*k))
	b = append(b, magic...)
	b = binary.LittleEndian.AppendUint16(b, uint16(n))
	b = binary.LittleEndian.AppendUint16(b, uint16(k))
	b = append(b, byte(rules), 0)
	b = append(b, x.Words...)
	b = append(b, x.Letters...)
	for _, e := range x.End {
		b = append(b, byte(e))
	}
	for _, row := range x.Counts {
		b = append(b, row...)
	}
	for _, table := range [][][]int8{x.AtStop, x.AtFrom} {
		for _, row := range table {
			for _, d := range row {
				b = append(b, byte(d))
			}
		}
	}
	return b
}

// Decode reads what Encode wrote. Damaged or cut-off bytes are an error.
func Decode(b []byte) (*Index, error) {
	if len(b) < headLen || string(b[:4]) != magic {
		return nil, errors.New("this is no passage index")
	}
	n, k, rules := int(binary.LittleEndian.Uint16(b[4:])), int(binary.LittleEndian.Uint16(b[6:])), int(b[8])
	if want := headLen + 3*n + rules*(n+2*k); len(b) != want || n == 0 || rules == 0 {
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
	for range rules {
		x.Counts = append(x.Counts, take(n))
	}
	signed := func() (rows [][]int8) {
		for range rules {
			row := make([]int8, 0, k)
			for _, d := range take(k) {
				row = append(row, int8(d))
			}
			rows = append(rows, row)
		}
		return rows
	}
	x.AtStop, x.AtFrom = signed(), signed()
	x.total()
	return x, nil
}
