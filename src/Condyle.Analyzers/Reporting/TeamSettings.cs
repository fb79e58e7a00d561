using Condyle.Analyzers.Reading;
using Condyle.Naming;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>A team's settings, as the attribute of its assembly has them; none where there is no attribute.</summary>
internal sealed class TeamSettings(AttributeData? attribute)
{
    public static TeamSettings Of(IAssemblySymbol assembly) =>
        new(assembly.GetAttributes().FirstOrDefault(candidate => candidate.AttributeClass is { } type && TypeKeys.PlainNameOf(type) == typeof(RigConventionsAttribute).FullName));

    public Conventions Conventions => Conventions.From(Setting);

    public IEnumerable<string> Faults => TeamSetting.Faults(Setting);

    /// <summary>Where they are written; none where a build wrote them.</summary>
    public SyntaxReference? Written => attribute?.ApplicationSyntaxReference;

    private string? Setting(string name) => attribute?.NamedArguments.FirstOrDefault(argument => argument.Key == name).Value.Value as string;
}
