package verify

import (
	"fmt"
	"io/fs"
	"strings"

	"sutur/generator/internal/mushaf"
)

// texts is witness 4 as results: letters compared, those alike, those that a fold explains, and the figures of the folds.
func texts(b *bench, dir fs.FS) error {
	a, err := fs.ReadFile(dir, mushaf.TextFile)
	if err != nil {
		return fmt.Errorf("read the text: %w", err)
	}
	second, err := fs.ReadFile(dir, "text-b.txt")
	if err != nil {
		return fmt.Errorf("read the second text: %w", err)
	}
	c := CompareTexts(string(a), string(second))
	s := b.witness("second text: letters")
	s.r.Unexplained, s.r.Agreeing = len(c.Differences), c.Alike
	for _, d := range c.Differences {
		if !strings.HasPrefix(d.What, "letter ") {
			c.Letters++ // a verse, a word or a sign is one place more
		}
	}
	s.r.Checked, s.r.Explained = c.Letters, c.Letters-c.Alike-len(c.Differences)
	for _, d := range c.Differences {
		s.r.Details = append(s.r.Details, d.String())
	}
	f := b.witness("second text: figures")
	f.same("verses", 0, "", "6236", fmt.Sprint(c.Verses))
	f.same("words", 0, "", "77433", fmt.Sprint(c.Words))
	for i, x := range folds {
		f.same("letters taken as equal: "+x.name, 0, "", fmt.Sprint(x.places), fmt.Sprint(c.Folded[i]))
	}
	return nil
}
