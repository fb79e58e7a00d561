using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// Which members of which files may run before a rig is built. It holds no code, so it outlives its compilation, and is used again where nothing that it
/// was worked out from has changed.
/// </summary>
internal sealed class OutsideReach
{
    private static readonly KeptWhileTyping<OutsideReach> Kept = new();
    private readonly IReadOnlyList<MemberNames>[] files;
    private readonly bool[][] reached;

    /// <summary>Where a name is mentioned in what is reached.</summary>
    private readonly Dictionary<string, List<(int File, int Number)>> mentions = [];

    /// <summary>The names by which that is called which builds rigs.</summary>
    private readonly HashSet<string> building;

    private OutsideReach(IReadOnlyList<CodeMentions> files, CancellationToken cancellation)
    {
        this.files = [.. files.Select(file => file.Members)];
        reached = [.. this.files.Select(members => new bool[members.Count])];
        var begin = this.files.SelectMany((members, file) => members.Select((member, number) => (member, file, number))).Where(one => one.member.BuildsRigs || one.member.RunsFirst).Select(one => (one.file, one.number)).ToList();
        foreach (var (file, number) in begin)
            reached[file][number] = true;
        IsEmpty = begin.Count == 0;
        RunsProgram = begin.Exists(one => Member(one).RunsProgram);
        var callers = Spread(begin, member => member.Names, (file, names) => file.MentioningAny(names), out building);
        Spread([.. begin, .. callers], member => member.Mentions, (file, names) => file.NamedAny(names), out _);
        for (var file = 0; file < files.Count; file++)
        {
            for (var number = 0; number < reached[file].Length; number++)
            {
                foreach (var name in reached[file][number] ? this.files[file][number].Mentions : [])
                {
                    if (!mentions.TryGetValue(name, out var places))
                        mentions[name] = places = [];
                    places.Add((file, number));
                }
            }
        }

        // In waves, each of which asks every file once: a list of all rigs reaches as many names as there are files.
        List<(int File, int Number)> Spread(List<(int File, int Number)> from, Func<MemberNames, IEnumerable<string>> names, Func<CodeMentions, HashSet<string>, IEnumerable<int>> next, out HashSet<string> seen)
        {
            var (all, known) = (new List<(int, int)>(), new HashSet<string>());
            for (var wave = from; wave.Count > 0; all.AddRange(wave))
            {
                var asked = new HashSet<string>(wave.SelectMany(one => names(Member(one))).Where(known.Add));
                wave = [];
                for (var file = 0; file < files.Count; file++)
                {
                    cancellation.ThrowIfCancellationRequested();
                    foreach (var number in next(files[file], asked))
                    {
                        if (!reached[file][number])
                            wave.Add((file, number));
                        reached[file][number] = true;
                    }
                }
            }

            seen = known;
            return all;
        }
    }

    private OutsideReach(OutsideReach known, IReadOnlyList<CodeMentions> files)
    {
        this.files = [.. files.Select(file => file.Members)];
        (reached, mentions, building, IsEmpty, RunsProgram) = (known.reached, known.mentions, known.building, known.IsEmpty, known.RunsProgram);
    }

    public bool IsEmpty { get; }

    public bool RunsProgram { get; }

    /// <summary>What is reached in the files of a compilation, in their order.</summary>
    public static OutsideReach Of(Compilation compilation, IReadOnlyList<CodeMentions> files, CancellationToken cancellation) =>
        Kept.Of(compilation, last => last.For(files), () => new OutsideReach(files, cancellation));

    /// <summary>The members that are reached and mention a name, by the numbers of their file and of them in it.</summary>
    public IReadOnlyList<(int File, int Number)> Mentioning(string name) => mentions.TryGetValue(name, out var places) ? places : [];

    private MemberNames Member((int File, int Number) one) => files[one.File][one.Number];

    private OutsideReach? For(IReadOnlyList<CodeMentions> others)
    {
        if (others.Count != files.Length)
            return null;
        var isSame = true;
        for (var i = 0; i < files.Length; i++)
        {
            if (ReferenceEquals(others[i].Members, files[i]))
                continue;
            if (!HoldsFor(others[i].Members, i))
                return null;
            isSame = false;
        }

        return isSame ? this : new OutsideReach(this, others);
    }

    // What isn't reached can mention what it likes, but for what would make it one that builds rigs.
    private bool HoldsFor(IReadOnlyList<MemberNames> members, int file)
    {
        if (members.Count != files[file].Count)
            return false;
        for (var i = 0; i < members.Count; i++)
        {
            var (now, before) = (members[i], files[file][i]);
            if (!now.IsCalledAs(before) || !(now.Mentions.SetEquals(before.Mentions) || (!reached[file][i] && !now.Mentions.Overlaps(building))))
                return false;
        }

        return true;
    }
}
