using System.Globalization;

namespace FrameOpt.Reports.Text;

/// <summary>Numbers as plain decimals, for files that other programs read.</summary>
public static class PlainNumber
{
    /// <summary>The shortest decimal text that reads back as the same number, never with an exponent.</summary>
    /// <param name="value">Any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite: it has no decimal text.</exception>
    public static string Text(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "only a finite number has a decimal text");
        if (value == 0)
            return "0";
        var shortest = value.ToString("R", CultureInfo.InvariantCulture);
        var exponentAt = shortest.IndexOf('E');
        return exponentAt < 0
            ? shortest
            : Shift(shortest[..exponentAt], int.Parse(shortest[(exponentAt + 1)..], CultureInfo.InvariantCulture));
    }

    private static string Shift(string mantissa, int exponent)
    {
        var sign = mantissa[0] == '-' ? "-" : "";
        var digits = mantissa.Replace("-", "").Replace(".", "");
        return exponent < 0
            ? $"{sign}0.{new string('0', -exponent - 1)}{digits}"
            : sign + digits.PadRight(exponent + 1, '0');
    }
}
