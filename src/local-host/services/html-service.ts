/** The platform's HtmlService: pages from the script's own files, nothing from elsewhere. */
export function htmlService(files: Readonly<Record<string, string>>) {
  const output = (content: string) => {
    let title = "";
    const page = {
      getContent: () => content,
      getTitle: () => title,
      setTitle: (text: string) => {
        title = text;
        return page;
      },
    };
    return page;
  };
  return {
    createHtmlOutput: output,
    createHtmlOutputFromFile: (name: string) => {
      const content = files[name];
      if (content === undefined) throw new Error(`No HTML file named ${name} was found.`);
      return output(content);
    },
  };
}
