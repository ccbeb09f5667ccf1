// What to do with a new key folder, for people who do not program.

/** A word as a shell takes it. */
const quoted = (word: string): string => (/^[\w./-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`);

/** The instructions in both languages, by name of file; commands name the folder as the person wrote it. */
export function readMe(shown: string): Readonly<Record<string, string>> {
  const folder = quoted(shown.replace(/\/+$/, '') || '/');
  const bundle = quoted(`${shown.replace(/\/+$/, '')}.bundle.json`);
  const commands = (says: readonly [string, string, string]) => `\`\`\`sh
leadwort check ${folder}   # ${says[0]}
leadwort couplets ${folder} -o ${quoted(`${shown.replace(/\/+$/, '')}/couplets.json`)}   # ${says[1]}
leadwort bundle ${folder} -o ${bundle}   # ${says[2]}
\`\`\``;
  return {
    'README.md': `# A key of your own

Two plants to start from: elephant ear, which is invasive in Texas, and the native pickerelweed, which people take
for it. Replace them with yours when you have seen how they are written.

| file | what stands in it |
| --- | --- |
| key.json | the name of the key, where it holds, its cautions |
| characters.json | the questions and their answers |
| taxa.json | the plants, their traits with sources, and what tells look-alikes apart |
| guidance.json | what to do and not to do |
| sources.json | where each fact was read |
| text/es.json | every sentence in Spanish |

Each file begins with a comment that tells how to change it. Any text editor will do.

${commands(['what is wrong, and where; then how well the key serves', 'the branching key, built from the traits', 'the one file that a page loads'])}

To see it on a page, put the bundle on your host beside the script and write

\`\`\`html
<script type="module" src="standalone/leadwort.js"></script>
<leadwort-key src="${bundle.replaceAll("'", '').split('/').at(-1)}"></leadwort-key>
\`\`\`

To add a plant:

1. Copy a plant in taxa.json. Give it its scientific name, names people use, and whether it is native.
2. Fill in its traits, one by one, each with the source where you read it. What you do not know, leave out.
3. Name each plant it is taken for under \`lookalikes\`, native ones first, and what tells them apart.
4. Write what to do in guidance.json. No doses, mixtures or product names. Local codes and permits come first.
5. Run \`leadwort check\`, and have a botanist read it all before you publish it.

A name from a key is not a confirmation. Say who can confirm it.
`,
    'LEAME.md': `# Su propia clave

Dos plantas para empezar: la oreja de elefante, que es invasora en Texas, y la flor de la laguna, que es nativa y que la gente
confunde con ella. Cámbielas por las suyas cuando haya visto cómo se escriben.

| archivo | qué contiene |
| --- | --- |
| key.json | el nombre de la clave, dónde vale y sus precauciones |
| characters.json | las preguntas y sus respuestas |
| taxa.json | las plantas, sus rasgos con fuentes, y qué distingue a las que se parecen |
| guidance.json | qué hacer y qué no hacer |
| sources.json | dónde se leyó cada dato |
| text/es.json | cada oración en español |

Cada archivo empieza con un comentario (en inglés) que dice cómo cambiarlo. Sirve cualquier editor de texto.

${commands(['qué está mal y dónde; después, qué tan bien sirve la clave', 'la clave ramificada, hecha a partir de los rasgos', 'el único archivo que carga una página'])}

Para verla en una página, ponga ese archivo en su servidor junto al script y escriba

\`\`\`html
<script type="module" src="standalone/leadwort.js"></script>
<leadwort-key lang="es" src="${bundle.replaceAll("'", '').split('/').at(-1)}"></leadwort-key>
\`\`\`

Para agregar una planta:

1. Copie una planta en taxa.json. Póngale su nombre científico, los nombres que usa la gente y si es nativa.
2. Llene sus rasgos uno por uno, cada uno con la fuente donde lo leyó. Lo que no sepa, déjelo fuera.
3. Anote en \`lookalikes\` cada planta con la que se confunde, primero las nativas, y qué las distingue.
4. Escriba en guidance.json qué hacer. Sin dosis, mezclas ni nombres de productos. Primero están las reglas y los permisos locales.
5. Corra \`leadwort check\`, y pida a un botánico que lea todo antes de publicarlo.

El nombre que da una clave no es una confirmación. Diga quién puede confirmarlo.
`,
  };
}
