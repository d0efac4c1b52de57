// The build answers such an import with the file's address.
declare module '*.wasm?url' {
  const address: string;
  export default address;
}
