package cli

import (
	"errors"
	"flag"
	"os"
	"path/filepath"

	"sutur/generator/internal/build"
	"sutur/generator/internal/verify"
)

// errWitness says that the report shows a place nobody has explained.
var errWitness = errors.New("a witness disagrees: see the report")

// runVerify holds the text and the engine against all witnesses and prints the report.
func runVerify(e *env, args []string) error {
	rest, err := parse(flag.NewFlagSet("verify", flag.ContinueOnError), args)
	if err != nil {
		return err
	}
	if err := none("verify", rest); err != nil {
		return err
	}
	ok, err := verify.Run(e.stdout, os.DirFS(filepath.Join(e.root, filepath.FromSlash(build.TextDir))))
	if err == nil && !ok {
		err = errWitness
	}
	return err
}
