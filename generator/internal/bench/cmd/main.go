// Command cmd measures the project and prints one table: cmd [STAGE…], all stages where none is
// named.
package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"strings"

	"sutur/generator/internal/bench"
	"sutur/generator/internal/build"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run returns the exit code: 2 for a stage that there is not, 1 where something was not measured.
func run(args []string, stdout, stderr io.Writer) int {
	for _, a := range args {
		if !slices.Contains(bench.Names(), a) {
			fmt.Fprintf(stderr, "%q is not a stage; accepted are %s\n", a, strings.Join(bench.Names(), ", "))
			return 2
		}
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	root, err := build.Root(".")
	if err == nil {
		err = bench.Run(ctx, root, args, stdout, stderr)
	}
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 1
	}
	return 0
}
