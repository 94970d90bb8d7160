package e2e

import (
	"bufio"
	"encoding/json"
	"fmt"
	"maps"
	"net/http"
	"net/url"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/network"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/engine"
)

// permissionsPolicy is the header that a host may send: everything that needs one is off but what
// the site uses (copying a link, and keeping the shared screen lit). A page cannot say it of itself.
const permissionsPolicy = "accelerometer=(), autoplay=(), camera=(), clipboard-read=(), clipboard-write=(self), display-capture=(), encrypted-media=(), fullscreen=(), gamepad=(), geolocation=(), gyroscope=(), hid=(), idle-detection=(), local-fonts=(), magnetometer=(), microphone=(), midi=(), payment=(), picture-in-picture=(), publickey-credentials-get=(), screen-wake-lock=(self), serial=(), storage-access=(), usb=(), window-management=(), xr-spatial-tracking=()"

// asks tells askedFor, a binding, of everything for which a page needs a permission, and does it.
const asks = `{
	const tell = what => globalThis.askedFor?.(what);
	const watch = (of, ...names) => {
		for (const name of names) {
			const own = of?.[name];
			if (typeof own !== "function") continue;
			of[name] = function (...x) { tell(name); return own.apply(this, x); };
			globalThis.watched = (globalThis.watched ?? 0) + 1;
		}
	};
	const proto = name => globalThis[name]?.prototype;
	watch(globalThis.Notification, "requestPermission");
	watch(globalThis.IdleDetector, "requestPermission");
	watch(globalThis.DeviceOrientationEvent, "requestPermission");
	watch(globalThis, "queryLocalFonts", "getScreenDetails", "showOpenFilePicker", "showSaveFilePicker", "showDirectoryPicker");
	watch(proto("PushManager"), "subscribe");
	watch(proto("Geolocation"), "getCurrentPosition", "watchPosition");
	watch(proto("MediaDevices"), "getUserMedia", "getDisplayMedia");
	watch(proto("Clipboard"), "read", "readText", "write", "writeText");
	watch(proto("StorageManager"), "persist");
	watch(proto("WakeLock"), "request");
	watch(proto("Bluetooth"), "requestDevice");
	watch(proto("USB"), "requestDevice");
	watch(proto("HID"), "requestDevice");
	watch(proto("Serial"), "requestPort");
	watch(proto("Navigator"), "requestMIDIAccess", "requestMediaKeySystemAccess", "registerProtocolHandler", "share", "vibrate");
	watch(proto("Document"), "requestStorageAccess");
	watch(proto("CredentialsContainer"), "get", "create");
	watch(proto("PaymentRequest"), "show");
	watch(proto("Sensor"), "start");
	watch(proto("Keyboard"), "lock");
	watch(proto("XRSystem"), "requestSession");
	watch(proto("Element"), "requestFullscreen", "requestPointerLock");
}`

// TestRequestsOfSession does everything once, from the first open to a session without a network, in
// a Chromium of its own, and looks at every request: those of the page as the page's own protocol
// tells them, and all that went out of the browser, its service worker's too, as its network log has
// them. All go to the site's own origin. Nothing is asked for that needs a permission, but to keep
// the record and to keep the shared screen lit; and all of it works under permissionsPolicy. Run it
// with -v for the list.
func TestRequestsOfSession(t *testing.T) {
	files := built(t)
	s := serve(t, "/a/b/", files, answering(func(w http.ResponseWriter, r *http.Request, next http.Handler) {
		w.Header().Set("Permissions-Policy", permissionsPolicy)
		next.ServeHTTP(w, r)
	}))
	elsewhere := serve(t, "/", files)
	log := filepath.Join(t.TempDir(), "net.json")
	ctx, stop, err := engine.StartChromium(chromedp.Flag("log-net-log", log))
	if err != nil {
		t.Fatal(err)
	}
	defer stop()
	p := tabOf(t, ctx, chromedp.WithNewBrowserContext())
	asked := map[string]bool{}
	if err := chromedp.Listen(p.ctx, func(ev any) {
		if ev, ok := ev.(*runtime.EventBindingCalled); ok {
			p.mu.Lock()
			asked[ev.Payload] = true
			p.mu.Unlock()
		}
	}); err != nil {
		t.Fatal(err)
	}
	call(p, runtime.AddBinding, runtime.AddBindingParams{Name: "askedFor"})
	p.before(asks)
	p.everything(s)
	if n := eval[int](p, `watched`); n < 20 {
		t.Errorf("only %d ways to ask for a permission are watched", n)
	}
	p.calm()
	p.stayedAt(s.address)
	p.mu.Lock()
	before := len(p.requests)
	p.mu.Unlock()

	// Last, one that must be seen: a page may lead elsewhere.
	call(p, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
		MatchedNetworkConditions: []*network.Conditions{{DownloadThroughput: -1, UploadThroughput: -1}},
	})
	eval[any](p, fmt.Sprintf(`(location.href = %q, 0)`, elsewhere.address+"about.html"))
	p.wait("the other origin", fmt.Sprintf(`location.href === %q`, elsewhere.address+"about.html"))
	if err := chromedp.Cancel(ctx); err != nil {
		t.Fatal(err)
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	for what := range asked {
		if what != "persist" && what != "request" {
			t.Errorf("it asked for what needs a permission: %s", what)
		}
	}
	if !asked["persist"] {
		t.Error("not even persistent storage was asked for: this check sees nothing")
	}
	home := strings.TrimSuffix(s.address, "/a/b/")
	out, own := netLog(t, log, home)
	if out[elsewhere.address+"about.html"] != 1 {
		t.Error("the network log lacks a request that was made: this check sees nothing")
	}
	maps.DeleteFunc(out, func(r string, _ int) bool { return strings.HasPrefix(r, elsewhere.address) })
	maps.DeleteFunc(own, func(r string, _ int) bool { return strings.HasPrefix(r, elsewhere.address) })
	report := newRequests(s.address, p.requests[:before], out, own)
	for _, r := range report.elsewhere {
		t.Errorf("a request left the site: %s", r)
	}
	for name := range report.rows {
		if strings.Contains(strings.ToLower(name), "maryam") {
			t.Errorf("a name is in an address: %s", name)
		}
	}
	for _, f := range files {
		if row := report.rows[f.Name]; row == nil && strings.HasPrefix(f.Name, "data/") {
			t.Errorf("%s was never asked for: the worker's requests are not seen", f.Name)
		}
	}
	t.Log(report)
}

// TestPermissionsPolicyTold: the header that hosts are told of is the one that is tested.
func TestPermissionsPolicyTold(t *testing.T) {
	data, err := os.ReadFile(filepath.Join(root, "DEVELOPERS.md"))
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(data), "\nPermissions-Policy: "+permissionsPolicy+"\n") {
		t.Errorf("DEVELOPERS.md does not have Permissions-Policy: %s", permissionsPolicy)
	}
}

// everything is a whole session, first with the host and then without.
func (p *page) everything(s *server) {
	p.t.Helper()
	p.begin(s.address, "Maryam")
	p.wait("everything to be kept", kept)
	p.open(s.address + "lessons/" + rule + ".html")
	p.wait("the colours of the lesson", `CSS.highlights?.size > 0`)
	p.open(s.address + "about.html")
	p.open(s.address)
	session(p)
	p.downloads(p.t.TempDir())
	p.click("backup")
	p.wait("the backup", passedOn)
	p.open(s.address + "#/give?rule=noon-ikhfa&from=78:12&to=78:16")
	p.wait("a picture of a link", visible(hook("qr")))
	p.open(s.address + "#/shared?rule=noon-ikhfa&from=78:12&to=78:16")
	p.wait("the shared screen", visible("main.board .w"))
	p.open(s.address + "#/rules")
	p.wait("the rules", `document.querySelectorAll("main.rules li").length > 9`)
	p.open(s.address + "#/learner")
	p.click("theme-dark")
	p.open(s.address + "#/print?sheet=practice&rule=noon-ikhfa&from=78:12&to=78:16")
	p.wait("the sheet", `document.querySelector(".leaf")`)
	call(p, cdppage.PrintToPDF, cdppage.PrintToPDFParams{})

	cut(p, s)
	p.open(s.address + "lessons/" + rule + ".html")
	p.open(s.address)
	session(p)
}

// netLog gives every address that the browser sent a request to, and how often, from its log
// (Chromium's NetLog, one event a line; in Chromium 156 a request begins with URL_REQUEST_START_JOB
// and names its initiator): all to the origin home and all that its pages and its worker made, and
// apart from them those that the browser made of its own accord, which the site has no part in.
func netLog(t *testing.T, file, home string) (out, own map[string]int) {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var constants struct {
		LogEventTypes map[string]int
	}
	out, own = map[string]int{}, map[string]int{}
	lines := bufio.NewScanner(f)
	lines.Buffer(nil, 64<<20)
	for lines.Scan() {
		line := strings.TrimSuffix(strings.TrimSpace(lines.Text()), ",")
		if rest, ok := strings.CutPrefix(line, `{"constants":`); ok {
			if err := json.Unmarshal([]byte(rest), &constants); err != nil {
				t.Fatal(err)
			}
			continue
		}
		var ev struct {
			Type   int
			Params struct{ URL, Initiator string }
		}
		if json.Unmarshal([]byte(strings.TrimSuffix(line, "],")), &ev) != nil || ev.Params.URL == "" {
			continue
		}
		switch {
		case ev.Type != constants.LogEventTypes["URL_REQUEST_START_JOB"]:
		case ev.Params.Initiator == "":
			t.Errorf("the log does not say who asked for %s", ev.Params.URL)
		case ev.Params.Initiator != "not an origin" || strings.HasPrefix(ev.Params.URL, home+"/"):
			out[ev.Params.URL]++
		default:
			own[ev.Params.URL]++
		}
	}
	if err := lines.Err(); err != nil {
		t.Fatal(err)
	}
	return out, own
}

// requests are those of a session, by the file of the site that they ask for.
type requests struct {
	rows      map[string]*requestRow
	elsewhere []string
	own       map[string]int // of the browser itself, by host
}

// requestRow says how often the page asked for a file, and how often it was asked of the host.
type requestRow struct{ page, host int }

func newRequests(home string, page []string, host, own map[string]int) *requests {
	r := &requests{rows: map[string]*requestRow{}, own: map[string]int{}}
	add := func(address string, page, host int) {
		if strings.HasPrefix(address, "data:") || strings.HasPrefix(address, "blob:"+home[:strings.Index(home[8:], "/")+8]) || address == "about:blank" {
			return
		}
		name, ok := strings.CutPrefix(address, home)
		if !ok {
			r.elsewhere = append(r.elsewhere, address)
			return
		}
		name, _, _ = strings.Cut(name, "#")
		if name == "" {
			name = "index.html"
		}
		if r.rows[name] == nil {
			r.rows[name] = &requestRow{}
		}
		r.rows[name].page += page
		r.rows[name].host += host
	}
	for _, a := range page {
		add(a, 1, 0)
	}
	for a, n := range host {
		add(a, 0, n)
	}
	slices.Sort(r.elsewhere)
	for a, n := range own {
		u, _ := url.Parse(a)
		r.own[u.Host] += n
	}
	return r
}

// kinds of files by how their names begin or end, the first that fits.
var requestKinds = [][2]string{
	{"sw.js", "service worker"}, {"assets/files.", "list of all files"}, {"data/", "text and rules"}, {"licences/", "licences"},
	{".html", "pages"}, {".js", "scripts"}, {".css", "styles"}, {".woff2", "font"}, {".png", "pictures"}, {".svg", "pictures"}, {".webmanifest", "manifest"}, {"", "other"},
}

func kindOf(name string) string {
	for _, k := range requestKinds {
		if strings.HasPrefix(name, k[0]) || path.Ext(name) == k[0] {
			return k[1]
		}
	}
	return ""
}

// String lists the kinds with their counts, and below each its files.
func (r *requests) String() string {
	names := map[string][]string{}
	for _, name := range slices.Sorted(maps.Keys(r.rows)) {
		names[kindOf(name)] = append(names[kindOf(name)], name)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "every request of a whole session; asked by the page, and asked of the host\n")
	for _, kind := range slices.Sorted(maps.Keys(names)) {
		var sum requestRow
		for _, name := range names[kind] {
			sum.page, sum.host = sum.page+r.rows[name].page, sum.host+r.rows[name].host
		}
		fmt.Fprintf(&b, "%s: %d files, %d by the page, %d of the host\n", kind, len(names[kind]), sum.page, sum.host)
		for _, name := range names[kind] {
			fmt.Fprintf(&b, "    %3d %3d  %s\n", r.rows[name].page, r.rows[name].host, name)
		}
	}
	fmt.Fprintf(&b, "other origins: %d\n", len(r.elsewhere))
	for _, host := range slices.Sorted(maps.Keys(r.own)) {
		fmt.Fprintf(&b, "of the browser itself, not of the site: %d to %s\n", r.own[host], host)
	}
	return b.String()
}
