namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Enums, over several types, and flags.</summary>
internal static class Enums
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var name = author.Name("Kind");
        var isFlags = choose.Chance(40);
        var under = choose.Any(NumberType.Int, NumberType.Int, NumberType.Byte, NumberType.Long, NumberType.Short);
        var members = Enumerable.Range(0, choose.Between(3, 4)).Select(index => $"{(isFlags ? "Flag" : "Case")}{(char)('A' + index)}").ToList();
        var values = isFlags
            ? members.Select((member, index) => $"{member} = {1 << index}")
            : members.Select((member, index) => choose.Chance(30) && index > 0 ? $"{member} = {(index * 10) + choose.Below(5)}" : member);
        if (isFlags)
            author.Program.Code.Line("[Flags]");
        author.Program.Code.Line($"internal enum {name} : {under} {{ {string.Join(", ", values)} }}");
        author.Program.Enums.Add(new EnumType(name, members, isFlags, under));
    }
}
