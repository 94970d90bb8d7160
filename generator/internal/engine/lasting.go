package engine

import (
	"context"
	"fmt"
	"os/exec"

	"github.com/chromedp/chromedp"
)

// Lasting is a browser whose profile outlives it: the tabs of one start find what those of the
// start before have stored.
type Lasting struct {
	Browser
	end func()
	tab func(context.Context) (Session, error)
}

// New opens a tab in the profile itself.
func (b *Lasting) New(ctx context.Context) (Session, error) { return b.tab(ctx) }

// Kill ends the browser and all its processes at once, without a word, as when a phone's system
// takes the memory back.
func (b *Lasting) Kill() { b.end() }

// Last starts an engine, chromium or firefox, with a profile in a folder.
func Last(name, profile string) (*Lasting, error) {
	switch name {
	case "chromium":
		return lastChromium(profile)
	case "firefox":
		path, err := FirefoxPath()
		if err != nil {
			return nil, err
		}
		f, err := startFirefox(path, profile, quiet)
		if err != nil {
			return nil, err
		}
		return &Lasting{f, func() { kill(f.run.cmd); <-f.run.done }, func(ctx context.Context) (Session, error) { return f.tab(ctx, "default") }}, nil
	}
	return nil, fmt.Errorf("%s with a lasting profile: %w", name, ErrCannot)
}

func lastChromium(profile string) (*Lasting, error) {
	var cmd *exec.Cmd
	ctx, cancel, err := StartChromium(chromedp.UserDataDir(profile), chromedp.ModifyCmdFunc(func(c *exec.Cmd) {
		grouped(c)
		cmd = c
	}))
	if err != nil {
		return nil, err
	}
	b, err := OverChromium(ctx)
	if err != nil {
		cancel()
		return nil, err
	}
	b.(*chromium).close = cancel
	return &Lasting{b, func() { kill(cmd); cancel() }, func(ctx context.Context) (Session, error) { return b.(*chromium).tab(ctx) }}, nil
}
