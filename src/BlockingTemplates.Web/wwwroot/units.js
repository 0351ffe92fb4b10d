// Lengths as the maker writes them.
const parts = 8;

// Millimetres in a unit as text or number for the project file: tenths of a centimetre, whole millimetres, eighths of an inch.
export function written(mm, unit) {
  const count = Math.round(mm / unit.mm / unit.step);
  if (unit.name !== "in") return String(Number((count * unit.step).toFixed(3)));
  const sign = count < 0 ? "-" : "";
  const size = Math.abs(count);
  const whole = Math.floor(size / parts);
  let over = size % parts;
  let of = parts;
  while (over && over % 2 === 0) [over, of] = [over / 2, of / 2];
  if (!over) return sign + whole;
  return `${sign}${whole ? `${whole} ` : ""}${over}/${of}`;
}
