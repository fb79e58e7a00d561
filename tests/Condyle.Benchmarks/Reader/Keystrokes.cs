using System.Globalization;
using Condyle.Analyzers.Reporting;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Benchmarks.Reader;

/// <summary>
/// A keystroke in a rig, in helpers that all rigs share and in a file that has nothing to do with rigs: the new compilation and the binding of the edited
/// file, against the new compilation and what we find in that file. Both type the same characters, each in a project of its own.
/// </summary>
internal static class Keystrokes
{
    private const int Bound = 0;
    private const int Found = 1;
    private static readonly int[] Sizes = [20, 200, 2000];

    private static readonly (string Name, string Path, string Edited)[] Edits =
    [
        ("a rig", Worker.File(7).Path, Worker.Edited),
        ("shared helpers", SharedFiles.Helpers.Path, SharedFiles.EditedHelper),
        ("an unrelated file", SharedFiles.Unrelated.Path, SharedFiles.EditedUnrelated),
    ];

    public static IEnumerable<Result> Measure()
    {
        var projects = Sizes.Select(size => new HarbourProject(size)).ToList();
        for (var edit = 0; edit < Edits.Length; edit++)
        {
            var (name, path, edited) = Edits[edit];
            // All sizes in the same rounds, or the growth would be that of the machine's load.
            var times = SideBySide.Run(warmUp: 30, rounds: 61, settles: false, [.. projects.SelectMany(project => Ways(project, path, edited))]);
            for (var size = 0; size < Sizes.Length; size++)
            {
                yield return new Result(
                    $"a keystroke in {name}, {Sizes[size]} rigs: with reading and rules, against binding the file",
                    times.Ratio((2 * size) + Found, (2 * size) + Bound),
                    ReaderGoals.Keystroke,
                    FormattableString.Invariant($"binding {times.Seconds((2 * size) + Bound) * 1000:0.0} ms, with reading and rules {times.Seconds((2 * size) + Found) * 1000:0.0} ms"));
            }

            var largest = 2 * (Sizes.Length - 1);
            var (grows, compilerGrows) = (times.Ratio(largest + Found, Found), times.Ratio(largest + Bound, Bound));
            yield return new Result(
                $"a keystroke in {name}: growth from {Sizes[0]} to {Sizes[^1]} rigs, against that of binding",
                grows / compilerGrows,
                ReaderGoals.KeystrokeGrowth,
                FormattableString.Invariant($"binding grows {compilerGrows:0.00} times, with reading and rules {grows:0.00} times"));
        }
    }

    private static IEnumerable<Prepare> Ways(HarbourProject project, string path, string edited)
    {
        var (plain, read) = (new Typing(project.Fresh(), path, edited), new Typing(project.Fresh(), path, edited));
        return [() => () => Binding.Of(plain.Type()), () => () => Find(read.Type())];
    }

    public static void Find(SemanticModel file)
    {
        var models = Binding.ModelsOf(file.Compilation, file);
        var session = new ReadingSession(file.Compilation, Definitions.Contract(file.Compilation), isLive: true, models);
        session.FindingsIn(file.SyntaxTree, CancellationToken.None);
    }
}

/// <summary>Somebody who types a digit more in a file and takes it back, again and again: what comes after it in the file moves each time.</summary>
internal sealed class Typing
{
    private readonly int position;
    private CSharpCompilation compilation;
    private SyntaxTree tree;
    private int typed;

    public Typing(CSharpCompilation compilation, string path, string edited)
    {
        this.compilation = compilation;
        tree = compilation.SyntaxTrees.Single(candidate => candidate.FilePath == path);
        position = tree.ToString().IndexOf(edited, StringComparison.Ordinal) + edited.Length;
    }

    /// <summary>The edited file in the compilation after the next keystroke.</summary>
    public SemanticModel Type()
    {
        var change = typed % 2 == 0 ? new TextChange(new TextSpan(position, 0), ((typed % 9) + 1).ToString(CultureInfo.InvariantCulture)) : new TextChange(new TextSpan(position, 1), "");
        typed++;
        var changed = tree.WithChangedText(tree.GetText().WithChanges(change));
        compilation = compilation.ReplaceSyntaxTree(tree, changed);
        tree = changed;
        return compilation.GetSemanticModel(tree);
    }
}
