using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Something that follows from a file's text alone, for each file of a compilation. It is kept with the file; and a compilation takes over what the last one
/// had in the same places, so that a keystroke in one file doesn't ask for thousands of others.
/// </summary>
/// <typeparam name="T">What it is.</typeparam>
internal sealed class OfEachFile<T>(Func<SyntaxTree, T> make)
    where T : class
{
    private readonly ConditionalWeakTable<SyntaxTree, T> byFile = new();
    private readonly ConditionalWeakTable<Compilation, Row> rows = new();

    // The last compilation's of each project, by its first file and by its last one: at most one of them is being typed in. Only its compilation keeps a row alive.
    private readonly ConditionalWeakTable<SyntaxTree, WeakReference<Row>> last = new();

    public T Of(SyntaxTree file) => byFile.GetValue(file, new ConditionalWeakTable<SyntaxTree, T>.CreateValueCallback(make));

    /// <summary>All files of a compilation, in its order.</summary>
    public Row Of(Compilation compilation)
    {
        if (rows.TryGetValue(compilation, out var known))
            return known;
        var row = rows.GetValue(compilation, Make);
        foreach (var end in Ends(row.Files))
        {
            last.Remove(end);
            last.GetValue(end, _ => new WeakReference<Row>(row));
        }

        return row;
    }

    private Row Make(Compilation compilation)
    {
        SyntaxTree[] files = [.. compilation.SyntaxTrees];
        Row? before = null;
        foreach (var end in Ends(files))
        {
            if (last.TryGetValue(end, out var kept) && kept.TryGetTarget(out before))
                break;
        }

        return new Row(this, files, before);
    }

    private static SyntaxTree[] Ends(SyntaxTree[] files) => files.Length > 1 ? [files[0], files[^1]] : files;

    /// <summary>The files of one compilation.</summary>
    internal sealed class Row
    {
        private readonly OfEachFile<T> owner;
        private readonly T?[] values;

        public Row(OfEachFile<T> owner, SyntaxTree[] files, Row? before)
        {
            this.owner = owner;
            Files = files;
            values = new T?[files.Length];
            for (var i = 0; i < files.Length && i < before?.Files.Length; i++)
            {
                if (ReferenceEquals(files[i], before.Files[i]))
                    values[i] = before.values[i];
            }
        }

        public SyntaxTree[] Files { get; }

        /// <summary>What belongs to the file in a place; worked out when it is first asked for.</summary>
        public T this[int place] => values[place] ??= owner.Of(Files[place]);
    }
}
