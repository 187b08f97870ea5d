/** Degrees Celsius of a temperature in kelvin: 0 °C is 273.15 K by definition. */
export const celsiusOfKelvin = (kelvin: number): number => kelvin - 273.15;
