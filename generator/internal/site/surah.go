package site

import (
	"cmp"
	"crypto/sha256"
	"fmt"
	"slices"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// The file of a surah, data/sNNN.HASH.bin.gz, before compression:
//
//	"SUR", version   4 bytes; the version is the byte DataVersion
//	digest           32 bytes, the SHA-256 of the surah's text in UTF-8
//	stream           a byte for each code point of the text, for each event, and for each word under a line
//
// The text is that of the surah's verses, each followed by a line feed. A byte of the stream below
// the length of the catalogue's alphabet is a code point of the text, by its place there. The bytes
// after those are events on the letter that ends at this point, by their place in the catalogue's
// kinds. The byte after all kinds says that the word that ends here bears the line of a
// prostration. So the text is what is left when all higher bytes are dropped, and an event stands
// where the letter does that bears it: words that repeat, repeat with their events, and compress
// together.
//
// Page and juz of a verse are in the catalogue, which says where each begins. HASH is that of every
// file (hash), and so the beginning of the digest in the catalogue.
const surahMagic = "SUR"

// kind is all of an event but its place. No cause has neither word nor letter.
type kind struct {
	rule  recite.RuleID
	count uint8
	flags uint8 // when | before<<2 | unwritten<<3
	say   recite.Detail
	cause bool
	word  int8 // of the cause, relative to that of the event
	at    int8 // letter of the cause: relative to that of the event in its own word, else in the word it stands in
}

func kindOf(e *recite.Event) kind {
	k := kind{rule: e.Rule, count: e.Count, flags: uint8(e.When), say: e.Detail}
	if e.Before {
		k.flags |= 1 << 2
	}
	if e.Unwritten {
		k.flags |= 1 << 3
	}
	if e.CauseLetter >= 0 {
		k.cause, k.word, k.at = true, e.CauseWord, e.CauseLetter
		if k.word == 0 {
			k.at -= int8(e.Letter)
		}
	}
	return k
}

// compare orders kinds by rule, then by all the rest.
func (k kind) compare(o kind) int {
	return cmp.Or(cmp.Compare(k.rule, o.rule), slices.Compare(k.numbers(), o.numbers()))
}

// numbers is the kind as the catalogue has it: rule, count, flags with the detail from the fifth
// bit on, and where there is a cause its word and letter.
func (k kind) numbers() []int {
	list := []int{int(k.rule), int(k.count), int(k.flags) | int(k.say)<<4}
	if k.cause {
		list = append(list, int(k.word), int(k.at))
	}
	return list
}

// code is what the bytes of the streams mean.
type code struct {
	alphabet []rune
	kinds    []kind
	letter   map[rune]byte
	event    map[kind]byte
	line     byte
}

// newCode gives a byte to every code point of t and to every kind of its events. It fails if there
// are too many.
func newCode(t *mushaf.Text, events [][]recite.Event) (*code, error) {
	c := &code{letter: map[rune]byte{'\n': 0}, event: map[kind]byte{}}
	for i := range t.Verses {
		for _, r := range t.Verses[i].Text {
			c.letter[r] = 0
		}
	}
	for _, list := range events {
		for i := range list {
			c.event[kindOf(&list[i])] = 0
		}
	}
	if n := len(c.letter) + len(c.event) + 1; n > 256 {
		return nil, fmt.Errorf("%d code points and %d kinds of events are more than a byte can name; at most 255 together are accepted", len(c.letter), len(c.event))
	}
	for r := range c.letter {
		if r > 0xFFFF {
			return nil, fmt.Errorf("the text has %U; code points up to U+FFFF are accepted", r) // one unit of a browser's strings
		}
		c.alphabet = append(c.alphabet, r)
	}
	for k := range c.event {
		c.kinds = append(c.kinds, k)
	}
	slices.Sort(c.alphabet)
	slices.SortFunc(c.kinds, kind.compare)
	for i, r := range c.alphabet {
		c.letter[r] = byte(i)
	}
	for i, k := range c.kinds {
		c.event[k] = byte(len(c.alphabet) + i)
	}
	c.line = byte(len(c.alphabet) + len(c.kinds))
	return c, nil
}

// describe writes the code into the catalogue.
func (c *code) describe(to *catalogue) {
	to.Alphabet = string(c.alphabet)
	for _, k := range c.kinds {
		to.Kinds = append(to.Kinds, k.numbers())
	}
}

// surah encodes surah i (from 0) with its events, in the order of the verses, and makes its entry
// in the catalogue.
func (c *code) surah(t *mushaf.Text, i int, events []recite.Event) (bundle.File, surahEntry) {
	su := t.Surahs[i]
	verses := t.Verses[su.First:][:su.Count]
	text := sha256.New()
	for _, v := range verses {
		fmt.Fprintf(text, "%s\n", v.Text)
	}
	b := append([]byte(surahMagic), DataVersion)
	b = text.Sum(b)
	for n := range verses {
		end := 0
		for end < len(events) && int(events[end].Verse) == su.First+n {
			end++
		}
		b, events = c.verse(b, &verses[n], events[:end]), events[end:]
	}
	name := fmt.Sprintf("data/s%03d.%s.bin.gz", su.Number, hash(b))
	return bundle.File{Name: name, Data: Compress(b)}, surahEntry{su.Number, su.Arabic, su.Latin, su.Count, digest(b)}
}

func (c *code) verse(b []byte, v *mushaf.Verse, events []recite.Event) []byte {
	slices.SortStableFunc(events, func(a, b recite.Event) int {
		return cmp.Or(cmp.Compare(a.Word, b.Word), cmp.Compare(a.Letter, b.Letter))
	})
	at := 0
	upTo := func(end int32) {
		for _, r := range v.Text[at:end] {
			b = append(b, c.letter[r])
		}
		at = int(end)
	}
	for w := range v.Words {
		for l, letter := range v.Words[w].Letters {
			upTo(letter.End)
			for len(events) > 0 && int(events[0].Word) == w && int(events[0].Letter) == l {
				b = append(b, c.event[kindOf(&events[0])])
				events = events[1:]
			}
		}
		upTo(v.Words[w].End)
		if v.Words[w].Lined {
			b = append(b, c.line)
		}
	}
	if len(events) > 0 {
		panic(fmt.Sprintf("%d:%d: an event is on no letter: %+v", v.Surah, v.Ayah, events[0])) // the engine's own fault
	}
	upTo(int32(len(v.Text)))
	return append(b, c.letter['\n'])
}
