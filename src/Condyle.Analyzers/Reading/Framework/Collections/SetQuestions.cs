namespace Condyle.Analyzers.Reading;

/// <summary>What sets are asked about other collections.</summary>
internal static class SetQuestions
{
    public static void Register<T>(TypeMembers<T> type, Func<T, IEnumerable<object?>> items, Func<T, object?, bool> has, Func<T, IEqualityComparer<object?>> rule)
        where T : class
    {
        Ask("SetEquals", (_, missing, extra) => missing == 0 && extra == 0);
        Ask("IsSubsetOf", (_, missing, _) => missing == 0);
        Ask("IsProperSubsetOf", (_, missing, extra) => missing == 0 && extra > 0);
        Ask("IsSupersetOf", (_, _, extra) => extra == 0);
        Ask("IsProperSupersetOf", (_, missing, extra) => missing > 0 && extra == 0);
        Ask("Overlaps", (own, missing, _) => missing < items(own).Count());

        void Ask(string name, Func<T, int, int, bool> answer) => type.Asks(name, (own, call) =>
        {
            var other = new HashTable(rule(own));
            foreach (var item in Other(call))
            {
                if (other.Find(item) < 0)
                    other.Add(item, null);
            }

            var missing = items(own).Count(item => other.Find(item) < 0);
            return answer(own, missing, other.Entries().Count(entry => !has(own, entry.Key)));
        });
    }

    /// <summary>The items of the other collection, each known.</summary>
    public static IEnumerable<object?> Other(Invocation call)
    {
        foreach (var item in call.Items(1))
            yield return KnownEquality.IsKnown(item) ? item : throw call.Unknown();
    }
}
