package importer

import (
	"crypto/sha256"
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/verify"
)

type surahA struct {
	ID              int
	Name            string
	Transliteration string
	Verses          []struct {
		ID   int
		Text string
	}
}

type verseB struct {
	Surah, Ayah int
	Text        string
}

// write converts all verses and gives the files of the text. Every rule must have changed as many
// places as it names, and the result must agree with B.
func write(a []surahA, b []verseB, list []Correction) (map[string][]byte, []Count, error) {
	c, err := convert(a, b, list)
	if err != nil {
		return nil, nil, err
	}
	counts, err := c.done.check()
	if err != nil {
		return nil, nil, err
	}
	if d := verify.CompareTexts(c.text.String(), c.witness.String()).Differences; len(d) > 0 {
		return nil, nil, fmt.Errorf("%d places differ from text B; the first: %s", len(d), d[0])
	}
	return c.files(), append(counts, Count{"words of corrections.json", len(list)}), nil
}

// conversion is the text as it comes about: a line a verse in each file, and what the rules
// changed.
type conversion struct {
	text, surahs, digests, witness, lines, whole strings.Builder
	done                                         tally
}

// convert converts all verses. A and B must have the same verses, and each correction one of them.
func convert(a []surahA, b []verseB, list []Correction) (*conversion, error) {
	fix := map[string]Correction{}
	for _, c := range list {
		fix[c.Ref] = c
	}
	c, n := &conversion{done: tally{}}, 0
	for _, su := range a {
		fmt.Fprintf(&c.surahs, "%d\t%s\t%s\t%d\n", su.ID, su.Name, su.Transliteration, len(su.Verses))
		for _, v := range su.Verses {
			ref := fmt.Sprintf("%d:%d", su.ID, v.ID)
			if n >= len(b) || b[n].Surah != su.ID || b[n].Ayah != v.ID {
				return nil, fmt.Errorf("%s of A has no partner in B", ref)
			}
			words, partner := strings.Split(c.done.run(codePoints, ref, v.Text, ""), " "), wordsB(b[n].Text)
			if f, ok := fix[ref]; ok {
				var err error
				if words, err = f.apply(words, partner); err != nil {
					return nil, fmt.Errorf("correction %s: %w", ref, err)
				}
				delete(fix, ref)
			}
			if err := c.verse(ref, words, partner); err != nil {
				return nil, err
			}
			fmt.Fprintf(&c.witness, "%s\t%s\n", ref, b[n].Text)
			n++
		}
	}
	if n != len(b) || len(fix) > 0 {
		return nil, fmt.Errorf("%d verses in A, %d in B, %d corrections without a verse", n, len(b), len(fix))
	}
	return c, nil
}

// verse spells one verse and adds it. partner are the words of B.
func (c *conversion) verse(ref string, words, partner []string) error {
	if len(words) != len(partner) {
		return fmt.Errorf("%s: %d words in A, %d in B", ref, len(words), len(partner))
	}
	line := ""
	for i, w := range words {
		if strings.Contains(w, prostrationLine) {
			line += fmt.Sprintf(" %d", i+1)
		}
		words[i] = c.done.run(spelling, ref, w, partner[i])
	}
	if line != "" {
		fmt.Fprintf(&c.lines, "%s\t%s\n", ref, line[1:])
	}
	t := strings.Join(words, " ")
	if _, at, bad := mushaf.ParseVerse(t); bad != 0 {
		return fmt.Errorf("%s word %d: U+%04X has no place in a word", ref, at, bad)
	}
	fmt.Fprintf(&c.text, "%s\t%s\n", ref, t)
	fmt.Fprintf(&c.digests, "%s\t%x\n", ref, sha256.Sum256([]byte(t)))
	fmt.Fprintf(&c.whole, "%s\n", t)
	return nil
}

func (c *conversion) files() map[string][]byte {
	lines := []byte(c.lines.String())
	return map[string][]byte{
		mushaf.TextFile:        []byte(c.text.String()),
		mushaf.SurahFile:       []byte(c.surahs.String()),
		mushaf.ProstrationFile: lines,
		mushaf.DigestFile: fmt.Appendf(nil, "whole\t%x\n%s\t%x\n%s",
			sha256.Sum256([]byte(c.whole.String())), mushaf.ProstrationFile, sha256.Sum256(lines), c.digests.String()),
		"text-b.txt": []byte(c.witness.String()),
	}
}

// check holds what was changed against what must be.
func (t tally) check() (counts []Count, err error) {
	for _, list := range [][]rule{codePoints, spelling} {
		for _, r := range list {
			if t[r.name] != r.places {
				return nil, fmt.Errorf("rule %q changed %d places; the reviewed text has %d", r.name, t[r.name], r.places)
			}
			counts = append(counts, Count{r.name, r.places})
		}
	}
	return counts, nil
}
