namespace Condyle.Analyzers.Reading;

/// <summary><c>Guid</c> and <c>Version</c>: values that code writes down, alike in every culture.</summary>
internal static class IdCalls
{
    private const string Id = "System.Guid";
    private const string Version = "System.Version";

    public static void Register()
    {
        Pure.Constant(Id + ".Empty", Guid.Empty);
        foreach (var name in new[] { "..ctor", ".Parse" })
            Pure.Add(Id + name, (string text) => Guid.Parse(text));
        Pure.Add(Id + ".ToString", (Guid id) => id.ToString());
        Pure.Add(Id + ".ToString", (Guid id, string format) => id.ToString(format));
        foreach (var name in new[] { ".op_Equality", ".Equals" })
            Pure.Add(Id + name, (Guid a, Guid b) => a == b);
        Pure.Add(Id + ".op_Inequality", (Guid a, Guid b) => a != b);
        FrameworkTable.Add(Id, "TryParse", call =>
        {
            var isRead = Guid.TryParse(call.Text(0), out var id);
            call.Out(call.Count - 1, id);
            return isRead;
        });
        Versions();
    }

    private static void Versions()
    {
        Pure.Add(Version + "..ctor", (int major, int minor) => new Version(major, minor));
        Pure.Add(Version + "..ctor", (int major, int minor, int build) => new Version(major, minor, build));
        Pure.Add(Version + "..ctor", (int major, int minor, int build, int revision) => new Version(major, minor, build, revision));
        foreach (var name in new[] { "..ctor", ".Parse" })
            Pure.Add(Version + name, (string text) => new Version(text));
        Pure.Add(Version + ".get_Major", (Version version) => version.Major);
        Pure.Add(Version + ".get_Minor", (Version version) => version.Minor);
        Pure.Add(Version + ".get_Build", (Version version) => version.Build);
        Pure.Add(Version + ".get_Revision", (Version version) => version.Revision);
        Pure.Add(Version + ".ToString", (Version version) => version.ToString());
        Pure.Add(Version + ".ToString", (Version version, int parts) => version.ToString(parts));
        Pure.Add(Version + ".CompareTo", (Version a, Version? b) => a.CompareTo(b));
        foreach (var name in new[] { ".op_Equality", ".Equals" })
            Pure.Add(Version + name, (Version? a, Version? b) => Equals(a, b));
        Pure.Add(Version + ".op_Inequality", (Version? a, Version? b) => !Equals(a, b));
        Pure.Add(Version + ".op_LessThan", (Version a, Version b) => a < b);
        Pure.Add(Version + ".op_LessThanOrEqual", (Version a, Version b) => a <= b);
        Pure.Add(Version + ".op_GreaterThan", (Version a, Version b) => a > b);
        Pure.Add(Version + ".op_GreaterThanOrEqual", (Version a, Version b) => a >= b);
    }
}
