/** Shapes of the two reference libraries, as far as the checks use them. */
declare module 'convert-units' {
  export default function convert(value: number): { from(unit: string): { to(unit: string): number } };
}
declare module 'psychrolib' {
  const psychrolib: { SI: number; SetUnitSystem(system: number): void; GetTDewPointFromRelHum(celsius: number, share: number): number };
  export default psychrolib;
}
