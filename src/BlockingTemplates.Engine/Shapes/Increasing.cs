namespace BlockingTemplates.Engine.Shapes;

/// <summary>Looks up places in lists of numbers that never fall.</summary>
internal static class Increasing
{
    /// <summary>Whether every number is greater than the one before it.</summary>
    public static bool Strictly(double[] numbers)
    {
        for (var i = 1; i < numbers.Length; i++)
        {
            if (!(numbers[i] > numbers[i - 1]))
                return false;
        }

        return true;
    }

    /// <summary>Index of the first number that is no less than a value; the length of the list where all are less.</summary>
    public static int FirstFrom(double[] numbers, double value)
    {
        var (low, high) = (0, numbers.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (numbers[middle] < value)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
