package passage

import (
	"encoding/binary"
	"slices"
)

// The index file, before compression, which the browser reads (site-src/app/plan/phrases.ts). All
// numbers are bytes but those of the head, which are little endian:
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
// Pauses are the phrases that end with 1, in order. Rules are in the order of recite.RuleID. Surah,
// verse, word, page and juz of a phrase follow from the ends and from the catalogue.
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
