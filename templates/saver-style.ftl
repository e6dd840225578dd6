<#-- Where ink is saved: grounds are white, and what was white on them is black. Text is set in a lighter cut, except in large print, which has to stay sturdy. It stands last on every page; the press thins rules. -->
body, .foot, .footstop, .footalways { font-family: 'Lato Light', Lato, 'DejaVu Sans'; }
.caution { background: white !important; }
.caution .label { color: black !important; }
.cautionsign { background: white !important; border: 0.9pt solid black; padding: 2.5016pt 5.3362pt !important; }
.hopline .here { color: black !important; }
.band { background: white !important; border-right: 0.9pt solid black; }
.bandword { color: black !important; }
.glossary .word { border-top: none; padding-top: 1.1mm; } .glossary .word strong { top: 1.1mm; }
.question { font-weight: normal; }
.hline.light { border-top: 0.9pt dotted black !important; } .vline.light { border-left: 0.9pt dotted black !important; }
.speech { border-width: 0.9pt; } .stoprow { border-top-style: dotted; } .stoprow .speech + .speech { border-style: dotted; }
.grid td { border-bottom-style: dotted; }
