using System.Runtime.CompilerServices;
using Condyle.Analyzers.Reporting;
using Condyle.Benchmarks.Measuring;
using Condyle.Benchmarks.Projects;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Benchmarks.Reader;

/// <summary>What readings hold once they are done, while their compilation lives and after it is let go; and what typing for long adds up to.</summary>
internal static class HeldMemory
{
    private const int Rigs = 200;
    private const int FewKeystrokes = 20;
    private const int ManyKeystrokes = 200;

    public static IEnumerable<Result> Measure()
    {
        var project = new HarbourProject(Rigs);
        // What the compiler learns of the framework stays with its references, whoever asks first.
        HeldWith(project, Report);
        yield return LetGo(project);
        yield return Typed(project);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Result LetGo(HarbourProject project)
    {
        var before = Memory.Held();
        var bound = HeldWith(project, _ => { });
        var kept = HeldWith(project, Report) - bound;
        var left = Memory.Held() - before;
        return new Result(
            $"memory of {Rigs} rigs read: what is left when the compilation is let go, against what was held with it",
            Math.Max(0, (double)left / kept),
            ReaderGoals.LeftBehind,
            FormattableString.Invariant($"held {kept / 1048576.0:0.0} MB beyond the bound compilation, left {left / 1048576.0:0.0} MB"));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Result Typed(HarbourProject project)
    {
        var typing = new Typing(project.Fresh(), Worker.File(7).Path, Worker.Edited);
        var before = Memory.Held();
        Type(typing, FewKeystrokes);
        var few = Memory.Held() - before;
        Type(typing, ManyKeystrokes);
        var many = Memory.Held() - before;
        GC.KeepAlive(typing);
        return new Result(
            $"memory held by typing: {ManyKeystrokes} keystrokes more, against {FewKeystrokes}",
            (double)many / few,
            ReaderGoals.HeldByTyping,
            FormattableString.Invariant($"{few / 1048576.0:0.0} MB after {FewKeystrokes} keystrokes, {many / 1048576.0:0.0} MB after {ManyKeystrokes} more"));
    }

    // The compilation is made in here and the call isn't inlined, so that nothing of it stays on the stack while memory is measured.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static long HeldWith(HarbourProject project, Action<CSharpCompilation> read)
    {
        var compilation = project.Fresh();
        Binding.OfAll(compilation, Binding.ModelsOf(compilation));
        read(compilation);
        var held = Memory.Held();
        GC.KeepAlive(compilation);
        return held;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Report(CSharpCompilation compilation)
    {
        var models = Binding.ModelsOf(compilation);
        var session = new ReadingSession(compilation, Definitions.Contract(compilation), isLive: false, models);
        foreach (var tree in compilation.SyntaxTrees)
            session.FindingsIn(tree, CancellationToken.None);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Type(Typing typing, int keystrokes)
    {
        for (var i = 0; i < keystrokes; i++)
            Keystrokes.Find(typing.Type());
    }
}
