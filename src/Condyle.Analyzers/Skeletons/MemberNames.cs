using System.Globalization;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Hands out property names, no two alike and none that the class already has.</summary>
internal sealed class MemberNames(string className)
{
    private readonly HashSet<string> taken = new(StringComparer.Ordinal)
    {
        className, "In", "Equals", "Finalize", "GetHashCode", "GetType", "MemberwiseClone", "ReferenceEquals", "ToString",
    };

    /// <summary>A property name for a joint or a series of joints.</summary>
    public string Take(string jointName, string suffix = "")
    {
        var wanted = Identifiers.Pascal(jointName, whenEmpty: "Joint") + suffix;
        if (taken.Add(wanted))
            return wanted;
        var free = wanted + "Joint";
        for (var number = 2; !taken.Add(free); number++)
            free = wanted + "Joint" + number.ToString(CultureInfo.InvariantCulture);
        return free;
    }
}
