using CsCheck;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A program that defines one rig.</summary>
/// <param name="Number">The number from which all its choices follow.</param>
internal sealed record GeneratedProgram(int Number, string Source);

/// <summary>Writes random programs that compile, end, and catch what they throw.</summary>
internal sealed class ProgramGen : Gen<string>
{
    private const ulong Start = 20260725;

    private const string Usings =
        """
        #nullable disable warnings
        using System;
        using System.Collections.Generic;
        using System.Collections.Immutable;
        using System.Globalization;
        using System.Linq;
        using System.Numerics;
        using System.Threading.Tasks;
        using Condyle;

        """;

    /// <summary>What follows lies in another file, which begins as the first one does.</summary>
    public const string NextFile = "// The next file:";

    private const string State =
        """
        internal static class State
        {
            public static RigDraft Rig = null!;
            public static Control Control;
            public static Group Group;
            public static Joint Joint;
        }

        internal sealed class Slip(string text) : Exception(text)
        {
            public string Text { get; } = text;
        }

        internal sealed class Held(string name) : IDisposable
        {
            public void Dispose() => Trace.Note("let go " + name);
        }

        """;

    /// <summary>The program with a number.</summary>
    public static GeneratedProgram Write(int number) => new(number, new ProgramGen().Generate(new PCG((uint)number, Start), null, out _));

    public override string Generate(PCG pcg, Size? min, out Size size)
    {
        var source = Write(new Author(new Choices(pcg)));
        size = new Size((ulong)source.Length);
        return source;
    }

    private static string Write(Author author)
    {
        var choose = author.Choose;
        Globals(author);
        Times(choose.Between(0, 2), () => Enums.Declare(author));
        Times(choose.Between(0, 2), () =>
        {
            author.Allow(5);
            choose.Any(Holders.Declare, Structures.Declare, Records.Declare, Classes.Declare, Generics.Declare, Delegates.Declare, Measures.Declare, Containers.Declare)(author);
        });
        Times(choose.Below(2), () => Extensions.Declare(author));
        Times(choose.Below(2), () => Statics.Declare(author));
        Helpers(author);
        var rig = Rig(author);
        return Usings + "namespace Rigs.Numbered;\n\n" + rig + "\n" + State + Prelude.Source + author.Program.Code;
    }

    private static void Globals(Author author)
    {
        author.Scope.Add(new Variable("State.Rig", AnyType.Rig, CanWrite: false, IsPlace: false, IsEverywhere: true));
        foreach (var handle in new[] { AnyType.Control, AnyType.Group, AnyType.Joint })
            author.Scope.Add(new Variable($"State.{handle}", handle, CanWrite: false, IsPlace: false, IsEverywhere: true));
    }

    private static void Helpers(Author author) => author.In(new Situation(), () => author.Code.Block("internal static class Helpers", () => Times(author.Choose.Between(1, 3), () =>
    {
        author.Allow(6);
        author.Choose.Any(Methods.Declare, Methods.Declare, Iterators.Declare, AsyncMethods.Declare, GenericMethods.Declare, Recursions.Declare)(author);
    })), author.Program.Code);

    private static Code Rig(Author author)
    {
        var code = new Code();
        var parts = Enumerable.Range(0, author.Choose.Between(2, 3)).Select(_ => author.Name("Part")).ToList();
        author.In(new Situation(), () =>
        {
            author.Code.Block("public sealed partial class TestRig : IRigDefinition", () =>
                author.Code.Block("public void Define(RigDraft rig)", () =>
                {
                    author.Code.Line("State.Rig = rig;");
                    author.Code.Line("State.Control = rig.Control(\"control\");");
                    author.Code.Line("State.Group = rig.Group(\"all_group\");");
                    author.Code.Line("State.Joint = rig.Skeleton(\"skeleton\").Root(\"root\");");
                    author.Program.Beginnings.ForEach(author.Code.Line);
                    foreach (var part in parts)
                        author.Code.Line($"{part}(rig);");
                    author.Code.Line("foreach (var line in Trace.Lines)");
                    author.Code.Line("    rig.Control(line);");
                }));
            author.Code.Line(NextFile);
            author.Code.Block("partial class TestRig", () =>
            {
                foreach (var part in parts)
                    Part(part, author);
            });
        }, code);
        return code;
    }

    /// <summary>A part of the rig; what it throws ends it alone.</summary>
    private static void Part(string name, Author author) => author.Code.Block($"private static void {name}(RigDraft rig)", () => author.Inside(Wall.None, () =>
    {
        author.Allow(12);
        author.Scope.Add(new Variable("rig", AnyType.Rig, CanWrite: false, IsPlace: false));
        author.In(new Situation { CanReturn = true }, () =>
        {
            author.Block("try", author.Choose.Between(2, 5), first: () => Declarations.Begin(author, 3));
            Tries.Catch(author, 0);
        });
    }));

    private static void Times(int count, Action write)
    {
        for (var i = 0; i < count; i++)
            write();
    }
}
