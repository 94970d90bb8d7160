package rules

import (
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/recite"
)

func TestProjectRules(t *testing.T) {
	list, ds := Load(os.DirFS("../../../rules-content/rules"))
	for _, d := range ds {
		t.Error(d)
	}
	ids := IDs()
	for i, r := range list {
		if i >= len(ids) || r.ID != ids[i] {
			t.Errorf("rule %d is %s; the engine's order is expected", i, r.ID)
		}
	}
	if len(list) != len(ids) {
		t.Errorf("%d rules; want %d", len(list), len(ids))
	}
}

func TestMistakes(t *testing.T) {
	good, err := os.ReadFile("../../../rules-content/rules/noon.json")
	if err != nil {
		t.Fatal(err)
	}
	edit := func(old, new string) string {
		if !strings.Contains(string(good), old) {
			t.Fatalf("noon.json has no %q", old)
		}
		return strings.Replace(string(good), old, new, 1)
	}
	for name, c := range map[string]struct{ src, want string }{
		"not a list":        {`{}`, `noon.json:1:1: this is not a list`},
		"not JSON":          {edit(`"needs": ["ghunnah"],`, `"needs": "ghunnah`), `this is not JSON`},
		"unknown field":     {edit(`"translit": "izhar"`, `"latin": "izhar"`), `noon.json:2:3: unknown field "latin"`},
		"wrong type":        {edit(`"counts": []`, `"counts": "2"`), `cannot unmarshal string`},
		"no end":            {strings.TrimSuffix(strings.TrimSpace(string(good)), "]"), `the list does not end`},
		"more":              {string(good) + "[]", `2 bytes after the list`},
		"unknown rule":      {edit(`"id": "noon-iqlab"`, `"id": "noon-qalb"`), `the engine has no rule "noon-qalb"`},
		"missing rule":      {edit(`"id": "noon-iqlab"`, `"id": "noon-qalb"`), `nothing is said about the engine's rule noon-iqlab`},
		"twice":             {edit(`"id": "noon-iqlab"`, `"id": "noon-ikhfa"`), `rule noon-ikhfa is there twice; keep one; the first is at rules-content/rules/noon.json:`},
		"family":            {edit(`"family": "noon"`, `"family": "nun"`), `rule noon-izhar is of family "nun"; families are wasl`},
		"no short":          {edit(`"short": "Look for noon with a sukun, or tanween, before one of the six throat letters. Mark the noon, or the letter that bears the tanween."`, `"short": " "`), `rule noon-izhar has no short`},
		"unknown need":      {edit(`"needs": ["ghunnah"]`, `"needs": ["gunna"]`), `rule noon-izhar needs "gunna", which is no rule`},
		"ring":              {edit(`"needs": ["ghunnah"]`, `"needs": ["noon-ikhfa"]`), `noon-izhar needs noon-ikhfa needs noon-izhar`},
		"count":             {edit(`"counts": [2]`, `"counts": [7]`), `is held for 7 counts; 1 to 6 are accepted`},
		"placeholder":       {edit(`{cause} comes`, `{casue} comes`), `has "{casue}"`},
		"open brace":        {edit(`{cause} comes`, `{cause comes`), `{cause comes`},
		"no counts":         {edit(`the n is read clearly`, `the n is held for {count}`), `speaks of a count and has none`},
		"stuck, quoted":     {edit(`"stuck": "Look at`, `"stuck": "“Look at`), `letters to say to a child who is stuck: "“Look at`},
		"stuck, too long":   {edit(`"stuck": "Look at`, `"stuck": "`+strings.Repeat("Look ", 22)+`at`), `write at most 110 letters`},
		"stuck, no end":     {edit(`throat letter come next?`, `throat letter come next`), `a sentence without an end`},
		"stuck, filled in":  {edit(`throat letter come next?`, `{cause} come next?`), `has "{cause}"`},
		"no full stop":      {edit(`letter that bears the tanween."`, `letter that bears the tanween"`), `a sentence without an end`},
		"setting":           {edit(`"counts": []`, `"counts": [], "setting": "speed"`), `is governed by "speed"; settings are muttasil, munfasil, arid, lin`},
		"nothing to choose": {edit(`"counts": [2]`, `"counts": [2], "setting": "arid"`), `has a setting and nothing to choose`},
		"role":              {edit(`"counts": []`, `"counts": [], "role": "loud"`), `has the role "loud"; roles are silent, long, ending`},
		"case":              {edit(`"unwritten":`, `"unheard":`), `has a sentence for "unheard"; name a detail`},
		"case's sentence":   {edit(`Here the n stays clear when you read on.`, `Here the n stays clear`), `a sentence without an end`},
		"Latin in Arabic":   {edit(`"إِظْهَارٌ"`, `"izhar"`), `'i' in its Arabic name`},
	} {
		t.Run(name, func(t *testing.T) {
			_, ds := Load(fstest.MapFS{"noon.json": {Data: []byte(c.src)}, "rest.json": {Data: rest(t)}})
			if !diag.HasError(ds) {
				t.Fatal("no error")
			}
			for _, d := range ds {
				if strings.Contains(d.String(), c.want) {
					return
				}
			}
			t.Errorf("no diagnostic with %q in %v", c.want, ds)
		})
	}
	t.Run("no file", func(t *testing.T) {
		if _, ds := Load(fstest.MapFS{}); !diag.HasError(ds) {
			t.Error("no error")
		}
	})
}

// rest is every project rule that is not in noon.json, as one list.
func rest(t *testing.T) []byte {
	t.Helper()
	var lists []string
	for _, f := range Families {
		if f == "noon" {
			continue
		}
		src, err := os.ReadFile("../../../rules-content/rules/" + f + ".json")
		if err != nil {
			t.Fatal(err)
		}
		lists = append(lists, strings.Trim(strings.TrimSpace(string(src)), "[]"))
	}
	return []byte("[" + strings.Join(lists, ",") + "]")
}

func TestDetailMistakes(t *testing.T) {
	src, err := os.ReadFile("../../../rules-content/rules/details.json")
	if err != nil {
		t.Fatal(err)
	}
	good := string(src)
	if list, ds := LoadDetails(fstest.MapFS{"details.json": {Data: src}}); len(ds) > 0 || len(list) != len(recite.Details()) {
		t.Fatalf("%d details, %v", len(list), ds)
	}
	for name, c := range map[string]struct{ old, new, want string }{
		"unknown":  {`"id": "inside"`, `"id": "outside"`, `details.json:7:3: the engine has no detail "outside"`},
		"missing":  {`"id": "inside"`, `"id": "outside"`, `nothing is said about the engine's detail inside`},
		"twice":    {`"id": "inside"`, `"id": "degree-1"`, `detail degree-1 is there twice`},
		"none":     {`"id": "inside"`, `"id": ""`, `the engine has no detail ""`},
		"count":    {`"counts": [2]`, `"counts": [8]`, `is held for 8 counts; 1 to 6 are accepted`},
		"at":       {`"at": "join"`, `"at": "start"`, `holds at "start"; join and stop are accepted`},
		"no end":   {`fatha."`, `fatha"`, `end it with a full stop`},
		"field":    {`"at": "join"`, `"when": "join"`, `unknown field "when"; a detail has id, counts, at and text`},
		"no comma": {`},`, `}`, `this is not JSON`},
	} {
		_, ds := LoadDetails(fstest.MapFS{"details.json": {Data: []byte(strings.Replace(good, c.old, c.new, 1))}})
		if !slices.ContainsFunc(ds, func(d diag.Diagnostic) bool { return strings.Contains(d.String(), c.want) }) {
			t.Errorf("%s: no diagnostic with %q in %v", name, c.want, ds)
		}
	}
	if _, ds := LoadDetails(fstest.MapFS{}); !diag.HasError(ds) {
		t.Error("no error without the file")
	}
}
