namespace Newcomers;

/// <summary>Names for the rig's own nodes, none of which a joint of the file or another node has.</summary>
internal sealed class Names(IEnumerable<string> joints)
{
    private readonly HashSet<string> taken = new(joints, StringComparer.OrdinalIgnoreCase);

    /// <summary>The wanted name; where it is taken, with the least number that makes it new before its ending.</summary>
    public string Take(string wanted)
    {
        var (start, end) = wanted.EndsWith("_group", StringComparison.Ordinal) ? (wanted[..^"_group".Length], "_group") : (wanted, "");
        for (var number = 2; !taken.Add(wanted); number++)
            wanted = $"{start}_{number}{end}";
        return wanted;
    }

    /// <summary>A tag for copied joints, such that no joint of the file is named as if it were a copy.</summary>
    public string TakeTag(string wanted)
    {
        var tag = wanted;
        for (var number = 2; taken.Any(name => name.StartsWith(tag + "_", StringComparison.OrdinalIgnoreCase)); number++)
            tag = $"{wanted}{number}";
        return tag;
    }
}
