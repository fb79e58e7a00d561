namespace Condyle.Analyzers.Reading;

/// <summary>Indices and ranges.</summary>
internal static class IndexCalls
{
    private const string Index = "System.Index";
    private const string Range = "System.Range";
    private static readonly IndexValue Start = new(0, FromEnd: false);
    private static readonly IndexValue End = new(0, FromEnd: true);

    public static void Register()
    {
        FrameworkTable.Add(Index, "op_Implicit", call => Of(call.Whole(0), fromEnd: false));
        FrameworkTable.Add(Index, ".ctor", call => Of(call.Whole(0), call.Count > 1 && call.Truth(call[1])));
        FrameworkTable.Add(Index, "FromEnd", call => Of(call.Whole(0), fromEnd: true));
        FrameworkTable.Add(Index, "FromStart", call => Of(call.Whole(0), fromEnd: false));
        FrameworkTable.Add(Index, "get_Start", _ => Start);
        FrameworkTable.Add(Index, "get_End", _ => End);
        var index = new TypeMembers<IndexValue>(Index);
        index.Asks("get_Value", (own, _) => own.Value);
        index.Asks("get_IsFromEnd", (own, _) => own.FromEnd);
        index.Asks("GetOffset", (own, call) => own.Of(call.Whole(1)));
        index.Asks("Equals", (own, call) => own.Equals(call[1]));
        index.Asks("ToString", (own, _) => TextValue.Plain(own.ToString()));
        FrameworkTable.Add(Range, ".ctor", call => call.Arguments is [IndexValue start, IndexValue end] ? new RangeValue(start, end) : throw call.Unknown());
        FrameworkTable.Add(Range, "StartAt", call => call[0] is IndexValue start ? new RangeValue(start, End) : throw call.Unknown());
        FrameworkTable.Add(Range, "EndAt", call => call[0] is IndexValue end ? new RangeValue(Start, end) : throw call.Unknown());
        FrameworkTable.Add(Range, "get_All", _ => new RangeValue(Start, End));
        var range = new TypeMembers<RangeValue>(Range);
        range.Asks("get_Start", (own, _) => own.Start);
        range.Asks("get_End", (own, _) => own.End);
        range.Asks("Equals", (own, call) => own.Equals(call[1]));
        range.Asks("ToString", (own, _) => TextValue.Plain(own.ToString()));
        range.Asks("GetOffsetAndLength", (own, call) =>
        {
            var (start, end) = (own.Start.Of(call.Whole(1)), own.End.Of(call.Whole(1)));
            return start >= 0 && start <= end && end <= call.Whole(1) ? new TupleValue([start, end - start]) : throw Making.OutOfRange();
        });
    }

    private static IndexValue Of(int value, bool fromEnd) => value >= 0 ? new IndexValue(value, fromEnd) : throw Making.OutOfRange();
}
