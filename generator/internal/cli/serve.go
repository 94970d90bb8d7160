package cli

import (
	"bufio"
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"sutur/generator/internal/build"
	"sutur/generator/internal/host"
)

const (
	servePort = 8420
	pollEvery = 400 * time.Millisecond
)

func runServe(e *env, args []string) error {
	flags := flag.NewFlagSet("serve", flag.ContinueOnError)
	port := flags.Int("port", servePort, "listen on port `N`; 0 takes a free one")
	rest, err := parse(flags, args)
	if err != nil {
		return err
	}
	if err := none("serve", rest); err != nil {
		return err
	}
	if *port < 0 || *port > 65535 {
		return usagef("serve: there is no port %d; accepted are 0 (any free one) to 65535", *port)
	}
	l, err := net.Listen("tcp", net.JoinHostPort("127.0.0.1", strconv.Itoa(*port)))
	if err != nil {
		return fmt.Errorf("listen (another --port may be free): %w", err)
	}
	var h host.Host
	srv := &http.Server{Handler: host.Loopback(&h), ReadHeaderTimeout: 10 * time.Second}
	gone := make(chan error, 1)
	go func() { gone <- srv.Serve(l) }()
	defer srv.Close()

	stamp := e.stamp()
	e.rebuild(&h)
	fmt.Fprintf(e.stdout, "http://%s/ (until interrupted)\n", l.Addr())
	e.flush()
	tick := time.NewTicker(pollEvery)
	defer tick.Stop()
	for {
		select {
		case <-e.ctx.Done():
			return nil
		case err := <-gone:
			return fmt.Errorf("serve: %w", err)
		case <-tick.C:
			if now := e.stamp(); now != stamp {
				stamp = now
				e.rebuild(&h)
				e.flush()
			}
		}
	}
}

// rebuild builds and hands the result to h. After a mistake h keeps what it has.
func (e *env) rebuild(h *host.Host) {
	files, err := e.build(filepath.Join(e.root, build.SiteDir))
	if err != nil {
		fmt.Fprintf(e.stderr, "%s: %v\n", programName, err)
		return
	}
	h.Set(files)
}

func (e *env) flush() {
	if b, ok := e.stdout.(*bufio.Writer); ok {
		b.Flush() // a lost terminal is noticed at the end
	}
}

// stamp sums up what is watched: it changes when a file comes, goes, or is written.
func (e *env) stamp() (s struct{ files, size, newest int64 }) {
	for _, dir := range build.Watched {
		// What cannot be read now is seen again at the next tick.
		_ = filepath.WalkDir(filepath.Join(e.root, dir), func(p string, d fs.DirEntry, err error) error {
			if errors.Is(err, os.ErrNotExist) {
				return nil
			}
			if err != nil {
				return err
			}
			if d.Name() == "node_modules" {
				return filepath.SkipDir
			}
			if i, err := d.Info(); err == nil && !d.IsDir() {
				s.files++
				s.size += i.Size()
				s.newest = max(s.newest, i.ModTime().UnixNano())
			}
			return nil
		})
	}
	return s
}
