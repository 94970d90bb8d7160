package site

import (
	"slices"
	"strings"
	"testing"
)

func TestNews(t *testing.T) {
	const log = "# Changelog\n\n## Unreleased\n\nFor families and teachers:\n\n- One thing,\n  in two lines.\n- Another “thing”.\n\n" +
		"For whoever hosts:\n\n- `verify` and more.\n\n## 1.0\n\nFor families and teachers:\n\n- The first.\n"
	for _, text := range []string{log, strings.ReplaceAll(log, "\n", "\r\n")} {
		got, err := news(text)
		if want := []string{"One thing, in two lines.", "Another “thing”.", "The first."}; err != nil || !slices.Equal(got, want) {
			t.Errorf("the news are %q (%v), want %q", got, err, want)
		}
	}
	for _, bad := range []string{
		"",
		"# Changelog\n- One.\n",
		"For families and teachers:\n",
		"For families and teachers:\n\n  One.\n",
		"For families and teachers:\n\n- One `word`.\n",
		"For families and teachers:\n\n- See [this](x).\n",
	} {
		if got, err := news(bad); err == nil {
			t.Errorf("%q is taken for %q", bad, got)
		}
	}
}

func FuzzNews(f *testing.F) {
	f.Add("For families and teachers:\n\n- One.\n  Two.\n\n- Three.\n# x")
	f.Fuzz(func(t *testing.T, log string) {
		items, err := news(log)
		if err != nil {
			return
		}
		for _, item := range items {
			if strings.ContainsAny(item, "\n<`") {
				t.Errorf("an item is %q", item)
			}
		}
	})
}
