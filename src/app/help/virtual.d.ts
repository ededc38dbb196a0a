// What the build writes of the licences (release/licences.ts).
declare module 'virtual:licences' {
  const licences: readonly {
    readonly name: string;
    readonly version: string;
    readonly licence: string;
    readonly text: string;
  }[];
  export default licences;
}
