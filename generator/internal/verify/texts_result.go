package verify

import (
	"fmt"
	"io/fs"
	"strings"

	"sutur/generator/internal/mushaf"
)

// texts is witness 4 as results: letters compared, those alike, those that a fold explains, and a
// line with the count of each fold.
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
	b.witness("second text: verses").figure(c.Verses, 6236)
	b.witness("second text: words").figure(c.Words, 77433)
	for i, f := range folds {
		b.witness("second text, letters taken as equal: "+f.name).figure(c.Folded[i], f.places)
	}
	return nil
}
