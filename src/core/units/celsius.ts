const zeroCelsiusK = 273.15;

/** Degrees Celsius of a temperature in kelvin: 0 °C is 273.15 K by definition. */
export const celsiusOfKelvin = (kelvin: number): number => kelvin - zeroCelsiusK;

/** Kelvin of a temperature in degrees Celsius. */
export const kelvinOfCelsius = (celsius: number): number => celsius + zeroCelsiusK;
