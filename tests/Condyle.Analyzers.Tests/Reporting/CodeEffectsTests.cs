using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>What may be left out or said again, and what does something besides giving a value.</summary>
public class CodeEffectsTests
{
    [Theory]
    [InlineData("n")]
    [InlineData("Stored")]
    [InlineData("-n * 2")]
    [InlineData("nameof(Stored)")]
    [InlineData("Math.Max(n, 2)")]
    [InlineData("\"a\".Trim().ToUpperInvariant()")]
    [InlineData("string.Concat(\"a\", n)")]
    [InlineData("new Vector3(1, n, 3)")]
    [InlineData("Vector3.Normalize(Vector3.UnitX)")]
    [InlineData("names.Select(name => name + \"_left\").First()")]
    [InlineData("names.Any(string.IsNullOrEmpty)")]
    [InlineData("nameof(Helper)")]
    [InlineData("new LimbOptions()")]
    [InlineData("(float)n")]
    [InlineData("new Vector3(n) + (Vector3.One * n)")]
    [InlineData("new List<string> { \"a\", \"b\" }")]
    [InlineData("(string[])[\"a\", .. names]")]
    public void What_only_gives_a_value_does_nothing(string code) => Assert.False(MayDo(code));

    [Theory]
    [InlineData("n = 2")]
    [InlineData("n++")]
    [InlineData("--n")]
    [InlineData("Console.In.Read()")]
    [InlineData("Console.Read()")]
    [InlineData("Interlocked.Increment(ref n)")]
    [InlineData("Made")]
    [InlineData("this.Made + 1")]
    [InlineData("this[n]")]
    [InlineData("Helper()")]
    [InlineData("rig.Control(\"hand\")")]
    [InlineData("new Counted()")]
    [InlineData("one + two")]
    [InlineData("int.TryParse(\"1\", out var number)")]
    [InlineData("names.Select(name => Helper()).First()")]
    [InlineData("names.Select(rig.Control).Count()")]
    [InlineData("names.Select(Print).First()")]
    [InlineData("names.Select(printed).First()")]
    [InlineData("n is var m")]
    [InlineData("(int)one")]
    [InlineData("Math.Abs(one)")]
    [InlineData("new List<string> { n }")]
    [InlineData("(Filled[])[[n]]")]
    [InlineData("names.Count > 0 ? n : throw new InvalidOperationException()")]
    public void What_sets_says_or_runs_code_of_the_team_may_do_something(string code) => Assert.True(MayDo(code));

    private static bool MayDo(string code)
    {
        var compilation = CompiledCode.Compile(("Code.cs",
            $$"""
            using System;
            using System.Collections.Generic;
            using System.Linq;
            using System.Numerics;
            using System.Threading;
            using Condyle;

            internal static class Filling
            {
                public static void Add(this List<string> names, int number) => names.Add(Console.ReadLine() + number);
            }

            internal sealed class Filled : List<int>;

            internal sealed class Counted
            {
                private int n;

                public int Stored { get; set; }

                public int Made => n++;

                public int this[int at] => n += at;

                public static Counted operator +(Counted one, Counted two) => one;

                public void Say(RigDraft rig, Counted one, Counted two, List<string> names, Func<string, string> printed)
                {
                    object? asked = {{code}};
                }

                public static implicit operator int(Counted one) => one.n++;

                private int Helper() => n++;

                private string Print(string name) => name + n++;
            }
            """));
        Assert.DoesNotContain(compilation.GetDiagnostics(), problem => problem.Severity == DiagnosticSeverity.Error);
        var tree = compilation.SyntaxTrees.Single(file => file.FilePath == "Code.cs");
        var asked = tree.GetRoot().DescendantNodes().OfType<VariableDeclaratorSyntax>().Single(local => local.Identifier.ValueText == "asked");
        return CodeEffects.AreIn(asked.Initializer!.Value, compilation.GetSemanticModel(tree));
    }
}
