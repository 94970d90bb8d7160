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

// write converts all verses and gives the files of the text. Every rule must have changed as many places as it names, and
// the result must agree with B.
func write(a []surahA, b []verseB, list []Correction) (map[string][]byte, []Count, error) {
	fix := map[string]Correction{}
	for _, c := range list {
		fix[c.Ref] = c
	}
	var text, surahs, digests, witness, lines strings.Builder
	whole := sha256.New()
	n, done := 0, tally{}
	for _, su := range a {
		fmt.Fprintf(&surahs, "%d\t%s\t%s\t%d\n", su.ID, su.Name, su.Transliteration, len(su.Verses))
		for _, v := range su.Verses {
			ref := fmt.Sprintf("%d:%d", su.ID, v.ID)
			if n >= len(b) || b[n].Surah != su.ID || b[n].Ayah != v.ID {
				return nil, nil, fmt.Errorf("%s of A has no partner in B", ref)
			}
			words, partner := strings.Split(done.run(codePoints, ref, v.Text, ""), " "), wordsB(b[n].Text)
			if c, ok := fix[ref]; ok {
				var err error
				if words, err = c.apply(words, partner); err != nil {
					return nil, nil, fmt.Errorf("correction %s: %w", ref, err)
				}
				delete(fix, ref)
			}
			if len(words) != len(partner) {
				return nil, nil, fmt.Errorf("%s: %d words in A, %d in B", ref, len(words), len(partner))
			}
			line := ""
			for i, w := range words {
				if strings.Contains(w, prostrationLine) {
					line += fmt.Sprintf(" %d", i+1)
				}
				words[i] = done.run(spelling, ref, w, partner[i])
			}
			if line != "" {
				fmt.Fprintf(&lines, "%s\t%s\n", ref, line[1:])
			}
			t := strings.Join(words, " ")
			if _, at, bad := mushaf.ParseVerse(t); bad != 0 {
				return nil, nil, fmt.Errorf("%s word %d: U+%04X has no place in a word", ref, at, bad)
			}
			fmt.Fprintf(&text, "%s\t%s\n", ref, t)
			fmt.Fprintf(&digests, "%s\t%x\n", ref, sha256.Sum256([]byte(t)))
			fmt.Fprintf(whole, "%s\n", t)
			fmt.Fprintf(&witness, "%s\t%s\n", ref, b[n].Text)
			n++
		}
	}
	if n != len(b) || len(fix) > 0 {
		return nil, nil, fmt.Errorf("%d verses in A, %d in B, %d corrections without a verse", n, len(b), len(fix))
	}
	counts, err := done.check()
	if err != nil {
		return nil, nil, err
	}
	if c := verify.CompareTexts(text.String(), witness.String()); len(c.Differences) > 0 {
		return nil, nil, fmt.Errorf("%d places differ from text B; the first: %s", len(c.Differences), c.Differences[0])
	}
	return map[string][]byte{
		mushaf.TextFile:        []byte(text.String()),
		mushaf.SurahFile:       []byte(surahs.String()),
		mushaf.ProstrationFile: []byte(lines.String()),
		mushaf.DigestFile: fmt.Appendf(nil, "whole\t%x\n%s\t%x\n%s",
			whole.Sum(nil), mushaf.ProstrationFile, sha256.Sum256([]byte(lines.String())), digests.String()),
		"text-b.txt": []byte(witness.String()),
	}, append(counts, Count{"words of corrections.json", len(list)}), nil
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
