// Package cli is the command line: it reads arguments, calls the stages and says what came of it.
//
// Results go to standard output. Everything else goes to standard error: bad input as one line that
// says what was wrong and what is accepted (exit 2), content mistakes one a line (exit 1), and
// failures of the system (exit 1).
package cli

import (
	"bufio"
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"strings"

	"sutur/generator/internal/build"
)

// Exit codes.
const (
	exitOK      = 0
	exitFailed  = 1 // a content mistake, or the system refused
	exitUsage   = 2 // bad input
	programName = "sutur"
)

// command is one word of the command line.
type command struct {
	name  string
	args  string // what follows the name, for help
	does  string // one line, for help
	start func(*env, []string) error
}

// commands in the order help shows them. A function, because help shows itself.
func commands() []command {
	return []command{
		{"build", "[--out DIR]", "make the site in dist/", runBuild},
		{"serve", "[--port N]", "build, serve on this machine only, build again on every change", runServe},
		{"annotate", "REF… [--json] [--stop REF.WORD]… [--join REF]…", "list where the rules act in verses such as 78:1-5", runAnnotate},
		{"verify", "", "hold the text and the engine against independent witnesses", runVerify},
		{"verify-copy", "[--list FILE] URL-OR-FOLDER", "compare a copy of the site with the list of files and digests of the build", runVerifyCopy},
		{"passages", "[--focus RULE] [--known RULE,…] [--near REF] [--in REF] [--places MIN-MAX] [--json]", "list the lines that fit a child best, and why", runPassages},
		{"help", "", "show this", runHelp},
	}
}

// env is what a command works with.
type env struct {
	ctx            context.Context // done when the user interrupts
	root           string          // the project's folder
	stdout, stderr io.Writer
}

// usageError is a mistake in the arguments: one line, what was wrong and what is accepted.
type usageError struct{ msg string }

func (e usageError) Error() string { return e.msg }

func usagef(format string, a ...any) error { return usageError{fmt.Sprintf(format, a...)} }

// errContent says that diagnostics have been printed and nothing was written.
var errContent = errors.New("nothing was written: the mistakes above come first")

// Run runs the command that args (without the program's name) ask for, in the project around the
// working directory, and returns the exit code.
func Run(args []string, stdout, stderr io.Writer) int {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	return run(ctx, ".", args, stdout, stderr)
}

func run(ctx context.Context, dir string, args []string, stdout, stderr io.Writer) int {
	out := bufio.NewWriterSize(stdout, 1<<16)
	err := dispatch(ctx, dir, args, out, stderr)
	if ferr := out.Flush(); err == nil && ferr != nil {
		err = fmt.Errorf("write the result: %w", ferr)
	}
	if err == nil {
		return exitOK
	}
	fmt.Fprintf(stderr, "%s: %s\n", programName, strings.ReplaceAll(err.Error(), "\n", " "))
	if errors.As(err, new(usageError)) {
		return exitUsage
	}
	return exitFailed
}

func dispatch(ctx context.Context, dir string, args []string, stdout, stderr io.Writer) error {
	if len(args) == 0 {
		return usagef("no command; accepted are %s", commandNames())
	}
	name := args[0]
	if slices.Contains([]string{"-h", "-help", "--help"}, name) {
		name = "help"
	}
	for _, c := range commands() {
		if c.name != name {
			continue
		}
		e := &env{ctx: ctx, stdout: stdout, stderr: stderr}
		if name != "help" {
			var err error
			if e.root, err = build.Root(dir); err != nil {
				return usageError{err.Error()}
			}
		}
		return c.start(e, args[1:])
	}
	return usagef("%q is not a command; accepted are %s", args[0], commandNames())
}

func commandNames() string {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	return strings.Join(names, ", ")
}

func runHelp(e *env, _ []string) error {
	fmt.Fprintf(e.stdout, "Usage: go run ./generator COMMAND\n\n")
	for _, c := range commands() {
		fmt.Fprintf(e.stdout, "  %-9s %s\n            %s\n", c.name, c.args, c.does)
	}
	return nil
}

// parse reads flags that may stand before, between and after the other arguments, which it returns.
// Everything after "--" is an argument.
func parse(fs *flag.FlagSet, args []string) ([]string, error) {
	fs.SetOutput(io.Discard)
	fs.Usage = func() {}
	var rest []string
	for len(args) > 0 {
		if err := fs.Parse(args); err != nil {
			if errors.Is(err, flag.ErrHelp) {
				err = errors.New("help is a command of its own")
			}
			return nil, usagef("%s: %s; accepted are %s", fs.Name(), err, flagNames(fs))
		}
		left := fs.Args()
		if n := len(args) - len(left); n > 0 && args[n-1] == "--" {
			return append(rest, left...), nil
		}
		if len(left) == 0 {
			break
		}
		rest, args = append(rest, left[0]), left[1:]
	}
	return rest, nil
}

// flagNames lists flags as a user writes them: --json, --stop REF.WORD.
func flagNames(fs *flag.FlagSet) string {
	var names []string
	fs.VisitAll(func(f *flag.Flag) {
		name := "--" + f.Name
		if arg, _ := flag.UnquoteUsage(f); arg != "" {
			name += " " + arg
		}
		names = append(names, name)
	})
	if len(names) == 0 {
		return "no flags"
	}
	return strings.Join(names, ", ")
}

// none refuses arguments that are left over.
func none(name string, rest []string) error {
	if len(rest) > 0 {
		return usagef("%s: %q is one argument too many; %s takes flags only", name, rest[0], name)
	}
	return nil
}
