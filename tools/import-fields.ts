import { type Definition, databaseHeader, type Field, pgnDatabase } from './pgn-database.ts';

/** Messages whose fields are read: those that carry the readings a refit is planned for, in one form and fixed places. */
const readMessages = [
  126_992, 127_237, 127_245, 127_250, 127_251, 127_257, 127_258, 127_488, 127_489, 127_493, 127_497, 127_501, 127_503,
  127_504, 127_505, 127_506, 127_507, 127_508, 127_509, 127_513, 127_751, 128_000, 128_259, 128_267, 128_275, 129_025,
  129_026, 129_029, 129_033, 129_038, 129_039, 129_040, 129_283, 129_284, 129_291, 129_794, 129_809, 129_810, 130_306,
  130_310, 130_311, 130_312, 130_313, 130_314, 130_316, 130_577, 130_578,
];

const readTypes: ReadonlySet<string> = new Set(['NUMBER', 'LOOKUP', 'TIME', 'DURATION', 'DATE', 'MMSI']);

/** Of what ships say of themselves, how their radio works is nothing to a dock test. */
const unreadOfShips: ReadonlySet<string> = new Set([
  'repeatIndicator',
  'positionAccuracy',
  'raim',
  'timeStamp',
  'specialManeuverIndicator',
  'sequenceId',
  'unitType',
  'integratedDisplay',
  'dsc',
  'band',
  'canHandleMsg22',
  'aisMode',
  'aisCommunicationState',
  'gnssType',
  'dte',
  'etaDate',
  'etaTime',
  'aisVersionIndicator',
  'mothershipUserId',
]);
const isOfShips = (pgn: number): boolean => (pgn >= 129_038 && pgn <= 129_040) || (pgn >= 129_794 && pgn <= 129_810);

/** Lookups whose words nobody is told. */
const wordless: ReadonlySet<string | undefined> = new Set([
  'AIS_MESSAGE_ID',
  'AIS_TRANSCEIVER',
  'NAV_STATUS',
  'SHIP_TYPE',
]);

/** The counter that ties messages of one moment together tells nothing by itself; of switches only the bank matters. */
const isRead = ({ Id, FieldType }: Field): boolean =>
  readTypes.has(FieldType) && Id !== 'sid' && !/^indicator\d+$/.test(Id);

const known = (value: number | undefined, what: string): number => {
  if (value === undefined) throw new Error(`A field without ${what}.`);
  return value;
};

const rowOf = (pgn: number, field: Field): string => {
  const columns = [
    pgn,
    field.Id,
    known(field.BitOffset, 'a place'),
    known(field.BitLength, 'a length'),
    field.Signed === true ? 1 : 0,
    known(field.Resolution, 'a resolution'),
    field.Offset ?? 0,
    known(field.RangeMin, 'a least value'),
    known(field.RangeMax, 'a largest value'),
    field.Unit ?? '',
    wordless.has(field.LookupEnumeration) ? '' : (field.LookupEnumeration ?? ''),
  ];
  return `  ${JSON.stringify(columns)},`;
};

const bitsInByte = 8;
const textRowOf = (pgn: number, field: Field): string => {
  const [firstByte, bytes] = [known(field.BitOffset, 'a place'), known(field.BitLength, 'a length')].map(
    (bits) => bits / bitsInByte,
  );
  return `  ${JSON.stringify([pgn, field.Id, firstByte, bytes])},`;
};

const formOf = (definitions: readonly Definition[], pgn: number): Definition => {
  const [form, ...more] = definitions.filter((one) => one.PGN === pgn && one.Fallback !== true);
  if (form === undefined || more.length > 0) throw new Error(`Message ${pgn} does not have one form.`);
  return form;
};

/** The text of src/core/facts/generated/message-fields.ts: where each field stands, and what the lookups among them mean. */
export const fieldTableText = (): string => {
  const database = pgnDatabase();
  const forms = readMessages.map((pgn) => formOf(database.PGNs, pgn));
  const fields = forms.flatMap(({ PGN, Fields }) =>
    Fields.filter((field) => isRead(field) && !(isOfShips(PGN) && unreadOfShips.has(field.Id))).map((field) => ({
      pgn: PGN,
      field,
    })),
  );
  const texts = forms.flatMap(({ PGN, Fields }) =>
    Fields.filter(({ FieldType }) => FieldType === 'STRING_FIX').map((field) => ({ pgn: PGN, field })),
  );
  const used = new Set(fields.map(({ field }) => field.LookupEnumeration).filter((name) => !wordless.has(name)));
  const lookups = database.LookupEnumerations.filter(({ Name }) => used.has(Name));
  return [
    ...databaseHeader(database),
    '/** Message, field, first bit, bits, 1 = signed, resolution, offset, least and largest value, unit or none, lookup or none. */',
    'export const fieldRows: readonly (readonly [number, string, number, number, 0 | 1, number, number, number, number, string, string])[] = [',
    ...fields.map(({ pgn, field }) => rowOf(pgn, field)),
    '];',
    '',
    '/** Message, text, first byte and bytes of its room. */',
    'export const textRows: readonly (readonly [number, string, number, number])[] = [',
    ...texts.map(({ pgn, field }) => textRowOf(pgn, field)),
    '];',
    '',
    '/** Lookup, and what each of its values means. */',
    'export const lookupRows: readonly (readonly [string, readonly (readonly [number, string])[]])[] = [',
    ...lookups.map(
      ({ Name, EnumValues }) => `  ${JSON.stringify([Name, EnumValues.map((one) => [one.Value, one.Name])])},`,
    ),
    '];',
    '',
  ].join('\n');
};
