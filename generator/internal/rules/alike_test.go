package rules

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

func TestAlikeMistakes(t *testing.T) {
	src, err := os.ReadFile("../../../rules-content/rules/noon.json")
	if err != nil {
		t.Fatal(err)
	}
	good := string(src)
	const iqlab = `"alike": ["noon-ikhfa", "meem-ikhfa"]`
	oneWay := regexp.MustCompile(`(?s)"oneWay": \{.*?\},`).FindString(good)
	for name, c := range map[string]struct{ old, new, want string }{
		"unknown":           {iqlab, `"alike": ["noon-ikhfa", "meem-ikhfa", "noon-qalb"]`, `rule noon-iqlab is alike to "noon-qalb", which is no rule`},
		"itself":            {iqlab, `"alike": ["noon-ikhfa", "meem-ikhfa", "noon-iqlab"]`, `rule noon-iqlab is alike to itself`},
		"twice":             {iqlab, `"alike": ["noon-ikhfa", "meem-ikhfa", "noon-ikhfa"]`, `rule noon-iqlab is alike to noon-ikhfa twice`},
		"not back":          {iqlab, `"alike": ["noon-ikhfa"]`, `rule meem-ikhfa is alike to noon-iqlab, which is not alike to it; name each in the other`},
		"back by mistake":   {iqlab, `"alike": ["noon-ikhfa"], "oneWay": {"meem-ikhfa": "A reason."}`, `rules noon-iqlab and meem-ikhfa are alike in both directions`},
		"ghunnah has one":   {iqlab, iqlab + `, "oneWay": {"ghunnah": " "}`, `rules noon-iqlab and ghunnah are alike in both directions`},
		"reason left empty": {`"oneWay": {`, `"oneWay": { "noon-idgham": "",`, `rule noon-izhar is alike to noon-idgham in one direction without a reason`},
		"other lengths":     {iqlab, iqlab + `, "oneWay": {"madd-lazim": "A reason."}`, `rule noon-iqlab is alike to madd-lazim, which is held for other lengths`},
		"no sound":          {`"sound": "a clear n",`, ``, `rule noon-izhar is alike to others and has no sound`},
		"sound alone":       {oneWay, "", `rule noon-izhar-mutlaq has a sound and is alike to none`},
		"sound's end":       {`"sound": "a clear n"`, `"sound": "a clear n."`, `rule noon-izhar has the sound "a clear n."`},
		"mark on the cause": {`"onCause": "The hum is on the second letter`, `"onCause": "The hum is on {cause}`, `has "{cause}"`},
	} {
		if !strings.Contains(good, c.old) {
			t.Errorf("%s: noon.json has no %s", name, c.old)
		}
		bad := strings.Replace(good, c.old, c.new, 1)
		_, ds := Load(fstest.MapFS{"noon.json": {Data: []byte(bad)}, "rest.json": {Data: rest(t)}})
		if !slices.ContainsFunc(ds, func(d diag.Diagnostic) bool { return strings.Contains(d.String(), c.want) }) {
			t.Errorf("%s: no diagnostic with %q in %v", name, c.want, ds)
		}
	}
}

// TestHeardAlike: what counts as right beside a rule, both ways and one way, in the engine's order.
func TestHeardAlike(t *testing.T) {
	for _, r := range projectRules(t) {
		want := map[string]string{
			"ghunnah":    "noon-idgham-ghunnah noon-iqlab noon-ikhfa meem-ikhfa meem-idgham",
			"noon-ikhfa": "noon-iqlab meem-ikhfa",
			"madd-tabii": "madd-badal madd-iwad madd-silah-short",
			"madd-badal": "",
		}
		if w, ok := want[r.ID]; ok && strings.Join(r.HeardAlike(), " ") != w {
			t.Errorf("%s is heard like %q; want %q", r.ID, r.HeardAlike(), w)
		}
	}
}

// TestOnCause: what is said of a mark on the letter that causes a rule can be said of each of its
// written places, and that letter is no place of the same rule, of which it would be right anyhow.
func TestOnCause(t *testing.T) {
	text, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		t.Fatal(err)
	}
	list := projectRules(t)
	engine := recite.New(text)
	said := map[string]int{}
	for v := range text.Verses {
		events := engine.Verse(nil, v)
		for _, e := range events {
			if list[e.Rule].OnCause == "" || e.Unwritten {
				continue
			}
			said[e.Rule.String()]++
			on := func(o recite.Event) bool {
				return o.Rule == e.Rule && int(o.Word) == int(e.Word)+int(e.CauseWord) && int(o.Letter) == int(e.CauseLetter)
			}
			if e.CauseLetter < 0 || slices.ContainsFunc(events, on) {
				t.Errorf("%d:%d word %d: %s, caused by letter %d", text.Verses[v].Surah, text.Verses[v].Ayah, e.Word+1, e.Rule, e.CauseLetter)
			}
		}
	}
	for _, r := range list {
		if r.OnCause != "" && said[r.ID] == 0 {
			t.Errorf("%s acts nowhere", r.ID)
		}
	}
	if len(said) < 5 {
		t.Errorf("%d rules", len(said))
	}
}

func TestGroupMistakes(t *testing.T) {
	src, err := os.ReadFile("../../../rules-content/rules/groups.json")
	if err != nil {
		t.Fatal(err)
	}
	list := projectRules(t)
	groups, ds := LoadGroups(fstest.MapFS{groupsFile: {Data: src}}, list)
	if len(ds) > 0 || len(groups) < 5 || groups[0].ID != "all-long" || len(groups[0].Families) != 2 {
		t.Fatalf("%v, %v", groups, ds)
	}
	for name, c := range map[string]struct{ old, new, want string }{
		"twice":          {`"id": "all-meem"`, `"id": "all-noon"`, `group all-noon is there twice`},
		"a rule's id":    {`"id": "all-meem"`, `"id": "meem-izhar"`, `group meem-izhar has the id of something else`},
		"another's id":   {`"id": "all-meem"`, `"id": "stops"`, `group stops has the id of something else`},
		"no id":          {`"id": "all-meem"`, `"id": ""`, `a group has the id ""`},
		"no name":        {`"name": "Letters that merge"`, `"name": " "`, `group all-idgham has a name of 1 letters`},
		"long name":      {`"name": "Letters that merge"`, `"name": "` + strings.Repeat("m", LongestName+1) + `"`, `group all-idgham has a name of 41 letters`},
		"no family":      {`["madd", "long-madd"]`, `[]`, `group all-long holds 0 rules`},
		"unknown family": {`["madd", "long-madd"]`, `["madd", "short-madd"]`, `group all-long holds the family "short-madd"`},
		"family twice":   {`["madd", "long-madd"]`, `["madd", "madd"]`, `group all-long holds the family madd twice`},
		"one rule":       {`["lam"]`, `["ghunnah"]`, `group all-lam holds 1 rules; take families with two rules or more`},
		"field":          {`"id": "all-meem"`, `"key": "all-meem"`, `unknown field "key"; a group has id, name and families`},
	} {
		if !strings.Contains(string(src), c.old) {
			t.Errorf("%s: groups.json has no %s", name, c.old)
		}
		_, ds := LoadGroups(fstest.MapFS{groupsFile: {Data: []byte(strings.Replace(string(src), c.old, c.new, 1))}}, list)
		if !slices.ContainsFunc(ds, func(d diag.Diagnostic) bool { return strings.Contains(d.String(), c.want) }) {
			t.Errorf("%s: no diagnostic with %q in %v", name, c.want, ds)
		}
	}
	if _, ds := LoadGroups(fstest.MapFS{}, list); !diag.HasError(ds) {
		t.Error("no error without the file")
	}
}

// projectRules are the project's rules in the engine's order.
func projectRules(t *testing.T) []Rule {
	t.Helper()
	list, ds := Load(os.DirFS("../../../rules-content/rules"))
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	return list
}
