#!/usr/bin/env bash
# What every change must pass, here and on any build machine. It stops at the first step that fails.
set -euo pipefail
cd "$(dirname "$0")/.."

# Every rule reads the code. A build that is up to date says nothing, so this one starts over; and a warning is as good as an error.
dotnet build --no-incremental -warnaserror

# What a rule can't know of this character.
dotnet test --no-build

# The files for the engine, in out/. It fails where baked motion isn't live motion.
dotnet run --project rigs --no-build -- bake --out out
