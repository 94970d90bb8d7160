package engine

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"
)

// TestFirefoxBrokenOff hands on events as Firefox 153 sends them: an answer that is broken off by
// leaving the page is no complaint, whatever the order in which the events arrive.
func TestFirefoxBrokenOff(t *testing.T) {
	const careful, told = "careful", "told" // told: the tab is told to leave its page
	brokenOff := brokenOff[len("error: "):]
	at := func(method string, ms int) [2]string {
		return [2]string{method, fmt.Sprintf(`{"context":"a","navigation":"n","timestamp":%d,"url":"http://127.0.0.1/"}`, ms)}
	}
	says := func(text string, ms int) [2]string {
		return [2]string{said, fmt.Sprintf(`{"type":"javascript","level":"error","source":{"realm":"r","context":"a"},"text":%q,"timestamp":%d}`, text, ms)}
	}
	for name, c := range map[string]struct {
		events [][2]string
		want   []string
	}{
		"while the page stays":      {[][2]string{at(leaves, 1), at(arrives, 9), says(brokenOff, 12)}, []string{brokenOff}},
		"while it is left":          {[][2]string{at(leaves, 1), at(arrives, 9), at(leaves, 20), says(brokenOff, 24), at(arrives, 30)}, nil},
		"heard late":                {[][2]string{at(leaves, 20), at(arrives, 30), says(brokenOff, 24)}, nil},
		"heard early":               {[][2]string{says(brokenOff, 24), at(leaves, 20), at(arrives, 30)}, nil},
		"before it is left":         {[][2]string{says(brokenOff, 19), at(leaves, 20), at(arrives, 30)}, []string{brokenOff}},
		"after the next one failed": {[][2]string{at(leaves, 20), at(stays, 30), says(brokenOff, 31)}, []string{brokenOff}},
		"once told to leave":        {[][2]string{at(told, 17), says(brokenOff, 19), at(leaves, 20), at(arrives, 30), says(brokenOff, 31)}, []string{brokenOff}},
		"another word":              {[][2]string{at(leaves, 20), says(careful, 24), at(arrives, 30)}, []string{careful}},
	} {
		t.Run(name, func(t *testing.T) {
			tab := &firefoxTab{f: &firefox{tabs: map[string]*firefoxTab{}}}
			tab.f.tabs["a"] = tab
			for _, e := range c.events {
				if e[0] == told {
					var at struct{ Timestamp int64 }
					json.Unmarshal([]byte(e[1]), &at)
					tab.leave(at.Timestamp)
					continue
				}
				tab.f.heard(e[0], json.RawMessage(e[1]))
			}
			for i := range c.want {
				c.want[i] = "error: " + c.want[i]
			}
			if got, _ := tab.Trouble(); !slices.Equal(got, c.want) {
				t.Errorf("heard %q, want %q", got, c.want)
			}
		})
	}
}
