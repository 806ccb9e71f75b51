using System.Text.RegularExpressions;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Forms;

/// <summary>A filled row of a form: its cells by the titles of their columns, and what is wrong with them.</summary>
/// <param name="form">The file.</param>
/// <param name="sheet">In it.</param>
/// <param name="row">In the sheet, from 0.</param>
/// <param name="columns">Column of each title, with the unit that its header says.</param>
/// <param name="errors">Takes what is wrong.</param>
internal sealed class FormRow(
    FilledForm form, FilledSheet sheet, int row, IReadOnlyDictionary<string, (int Index, FormColumn Column, string Unit)> columns,
    List<Diagnostic> errors)
{
    private static readonly Regex bareNumber = new(@"^[+-]?[\d.,'’]+(?:[eE][+-]?\d+)?$");

    /// <summary>The cell, without blanks around it.</summary>
    public string Text(string title) => sheet.Cell(row, columns[title].Index);

    /// <summary>True when something stands there.</summary>
    public bool Has(string title) => Text(title).Length > 0;

    /// <summary>Where the cell stands.</summary>
    public string Place(string title) => sheet.Place(form, row, columns[title].Index);

    /// <summary>Reports an error of a cell.</summary>
    public void Error(string title, string what, string fix) => errors.Add(new Diagnostic(
        Place(title), 0, 0, VisibleText.Quoted(Text(title)), VisibleText.Sentence(what), VisibleText.Sentence(fix)));

    /// <summary>A number in the base unit of its column, NaN after an error, null where nothing stands. A number without a unit has that
    /// of the header.</summary>
    public double? Number(string title, double most)
    {
        if (!Has(title))
            return null;
        var (_, column, unit) = columns[title];
        var text = bareNumber.IsMatch(Text(title)) ? $"{Text(title)} {unit}" : Text(title);
        var bag = new DiagnosticBag(Place(title));
        var range = column.Dimension == Dimension.TemperatureDifference || title.EndsWith(FormTable.Altitude, StringComparison.Ordinal)
            ? AllowedRange.Within(most, FormattableString.Invariant($"{most:0.###}"))
            : AllowedRange.NonNegativeUpTo(most, FormattableString.Invariant($"{most:0.###}"));
        var quantity = Quantity.Read(new Node.Scalar(text, false, 0, 0), title, column.Dimension!, range, bag);
        errors.AddRange(bag.Diagnostics().Select(found => found with { Excerpt = VisibleText.Quoted(Text(title)) }));
        return quantity?.Base ?? double.NaN;
    }

    /// <summary>A number that must stand there.</summary>
    public double Required(string title, double most)
    {
        if (Number(title, most) is { } number)
            return number;
        Error(title, $"{title} is empty.", "Fill it in: the readings of this row mean nothing without it.");
        return double.NaN;
    }

    /// <summary>One of the words of the column, or null where nothing stands or after an error.</summary>
    public string? Word(string title)
    {
        if (!Has(title))
            return null;
        var column = columns[title].Column;
        if (column.Words.FirstOrDefault(word => word.Equals(Text(title), StringComparison.OrdinalIgnoreCase)) is { } known)
            return known;
        Error(title, $"{title} is none of {string.Join(", ", column.Words)}.", "Write one of them.");
        return null;
    }

    /// <summary>A size and which way, as a signed number; null where neither stands.</summary>
    /// <param name="size">Title of the size.</param>
    /// <param name="way">Title of the way.</param>
    /// <param name="plus">The word for above 0.</param>
    /// <param name="most">Largest size in the base unit.</param>
    public double? Sided(string size, string way, string plus, double most)
    {
        var number = Number(size, most);
        if (number is null)
        {
            if (Has(way))
                Error(size, $"{way} is filled in and {size} is not.", $"Fill in {size}, or clear both.");
            return null;
        }

        if (number == 0)
            return 0;
        if (!Has(way))
            Error(way, $"{size} says how much, and {way} does not say which way.", "Say which way: nothing is guessed.");
        return Word(way) is { } word ? (word == plus ? number : -number) : double.NaN;
    }

    /// <summary>The lateral offset: "20 mm left".</summary>
    public double Offset()
    {
        var match = Regex.Match(Text(FormTable.Offset), @"^(?<size>\d.*?)\s*(?<side>left|right)?$", RegexOptions.IgnoreCase);
        var quantity = match.Success ? Quantity.Read(new Node.Scalar(match.Groups["size"].Value, false, 0, 0), FormTable.Offset,
            Dimension.Length, AllowedRange.NonNegativeUpTo(1, "1 m"), new DiagnosticBag("")) : null;
        if (quantity is { Base: 0 } || quantity is not null && match.Groups["side"].Success)
            return match.Groups["side"].Value.Equals("left", StringComparison.OrdinalIgnoreCase) ? -quantity.Base : quantity.Base;
        Error(FormTable.Offset, "The lateral offset is a length with its unit and a side.", "Write it as in: 20 mm left.");
        return double.NaN;
    }
}
